// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/food_rows.h"

#include <string>

/// What foods and samples of a collection have to keep among each other, for the verbs and for undo. Each
/// throws StoreError (Refused) with a sentence.
namespace tarebowl::store {

/// Another food than `self` has the code.
void refuseTakenCode(Collection::Inner& inner, const std::string& code, long long self);
/// A food that is made from itself, over however many others, cooked or mixed. Called after the write, so
/// that the new record is part of the chain.
void refuseCycle(Collection::Inner& inner, const std::string& code);
/// Another sample than this one stands for the same food of the same table.
void refuseTakenSource(Collection::Inner& inner, const SampleRows& rows);

}  // namespace tarebowl::store
