// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/collection/open_collection.h"

#include <QString>

namespace tarebowl::ui {

/// What is to be said of the server and of what waits for it; empty where all is there.
[[nodiscard]] QString waitingText(const OpenCollection& collection);

/// "119.5 g", "all eaten", "12 g left, 3 g spilled".
[[nodiscard]] QString valueText(const store::NotedValue& value);
/// "125 g, Keeper B"; "nothing" where nothing counts there.
[[nodiscard]] QString theirsText(const store::WaitingEntry& entry);
/// "Family, morning"; that it cannot be read any more.
[[nodiscard]] QString bowlText(const store::WaitingEntry& entry);
/// "kale, weighed in".
[[nodiscard]] QString notedText(const store::WaitingEntry& entry);
/// What is said of an entry that a person looks at: what it is, and what a choice would do.
[[nodiscard]] QString aboutText(const store::WaitingEntry& entry);

}  // namespace tarebowl::ui
