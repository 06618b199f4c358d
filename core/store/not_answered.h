// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace tarebowl::store {

/// Within a Reading (reading.h): what was asked is noted, and has no answer yet. No error, and so no
/// std::exception: nobody between the question and the Reading takes it for one.
struct NotAnswered {};

}  // namespace tarebowl::store
