// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace tarebowl::ui {

/// What a person typed stands in the window as it was typed: a label or tip takes a name such as "<b>kale" or
/// "<img …>" for its letters, not for markup that a collection from elsewhere could bring. Labels that are
/// made rich on purpose, from words that are escaped, say so themselves. One is installed on the application.
class PlainWords : public QObject {
 public:
  using QObject::QObject;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace tarebowl::ui
