// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/change_log.h"
#include "ui/animals/animal_page.h"

#include <QString>

namespace tarebowl::ui {

/// Whether an entry of the change log is about what the page shows: the thing itself, its members' stays and
/// readings, its energy plan, its profile.
[[nodiscard]] bool isAbout(const store::Change& change, const AnimalPage& page);

/// What changed, in words: "mass of T-01 on 3 Oct 2026: 183 g", "maximum of Iron: 100 instead of 200".
[[nodiscard]] QString storyOf(const store::Change& change);

}  // namespace tarebowl::ui
