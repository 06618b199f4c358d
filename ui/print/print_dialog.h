// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <functional>

class QPagedPaintDevice;
class QWidget;

namespace tarebowl::ui {

/// The system's dialog for a printer; `paint` gets its pages. False where the person would rather not.
bool printByDialog(QWidget* parent, const QString& title,
                   const std::function<void(QPagedPaintDevice&)>& paint);

}  // namespace tarebowl::ui
