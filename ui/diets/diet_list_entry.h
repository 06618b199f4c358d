// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace tarebowl::ui {

/// What the list at the left of the room shows in a row.
struct DietListEntry {
  enum class Kind {
    Heading,    ///< of the rows below it
    Diet,       ///< of the collection; key: its code
    NoDietYet,  ///< a group; key: its code
    File        ///< a problem file; key: its path
  };
  Kind kind = Kind::File;
  QString key{};
  QString title{};
  QString subtitle{};
  bool readable = true;
};

}  // namespace tarebowl::ui
