// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// rotations: those that a collection keeps, or one with its calendar, its balance and what is bought for it.
/// replan: the days of one that are not over, anew.
void defineKeptRotations(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
