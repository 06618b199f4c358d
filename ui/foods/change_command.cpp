// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/change_command.h"

#include "ui/foods/food_desk.h"

#include <utility>

namespace tarebowl::ui {

ChangeCommand::ChangeCommand(FoodDesk& desk, std::int64_t change, store::FoodId food, const QString& what)
    : QUndoCommand(what), desk_(desk), change_(std::make_shared<std::int64_t>(change)), food_(food) {}

void ChangeCommand::redo() {
  if (!std::exchange(first_, false)) takeBack();
}

void ChangeCommand::undo() {
  takeBack();
}

void ChangeCommand::takeBack() {
  // The number is read on the clerk's thread, after an undo that is still on its way has set it: never while
  // this thread writes it, because answers and questions follow each other.
  FoodDesk& desk = desk_;
  desk.write(
      [change = change_](store::Collection& collection, const store::Author& author) {
        const store::Written written = store::undo(collection, *change, author);
        *change = written.change;
        return written;
      },
      [&desk, food = food_](const store::Written& /*written*/) { desk.readAgain(food); });
}

}  // namespace tarebowl::ui
