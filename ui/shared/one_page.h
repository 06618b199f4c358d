// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QIODevice;

namespace tarebowl::ui {

/// Lays a page in HTML out as a PDF on A4: one page, set smaller where it must be, down to 60 %; further
/// pages only beyond that.
void layOutOnePage(const QString& html, const QString& title, QIODevice& out);

}  // namespace tarebowl::ui
