// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/larder_command.h"

#include "ui/foods/food_desk.h"

#include <utility>

namespace tarebowl::ui {

LarderCommand::LarderCommand(FoodDesk& desk, LarderEdit done, const QString& what)
    : QUndoCommand(what), desk_(desk), edit_(std::move(done)) {}

void LarderCommand::redo() {
  if (!std::exchange(first_, false)) desk_.write(edit_, {});
}

void LarderCommand::undo() {
  desk_.write(inverse(edit_), {});
}

LarderEdit inverse(const LarderEdit& edit) {
  LarderEdit turned = edit;
  std::visit([](auto& one) { std::swap(one.before, one.after); }, turned);
  return turned;
}

FoodKey foodOf(const LarderEdit& edit) {
  if (const auto* food = std::get_if<FoodEdit>(&edit)) return food->key;
  if (const auto* sample = std::get_if<SampleEdit>(&edit)) return sample->food;
  return std::get<HandEdit>(edit).food;
}

}  // namespace tarebowl::ui
