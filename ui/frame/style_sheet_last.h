// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace tarebowl::ui {

/// Takes the program's style sheet off before a window is built, and puts it on again when the window is
/// shown: under a sheet, whatever is put into something else is dressed anew with all that is in it, and a
/// start takes several times as long.
class StyleSheetLast {
 public:
  StyleSheetLast();
  /// The first call; another one does nothing.
  void putOn();

 private:
  QString sheet_;  ///< empty once it is on
};

}  // namespace tarebowl::ui
