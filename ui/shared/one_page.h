// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QIODevice;
class QPagedPaintDevice;

namespace tarebowl::ui {

/// Lays a page in HTML out on one page, set smaller where it must be, down to 60 %; further pages only beyond
/// that. It is laid out at one resolution, whatever dots the device has: what is printed is what a PDF shows.
void layOutOnePage(const QString& html, QPagedPaintDevice& device);
/// The same as a PDF on A4.
void layOutOnePage(const QString& html, const QString& title, QIODevice& out);

}  // namespace tarebowl::ui
