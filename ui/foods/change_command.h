// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/food_records.h"

#include <QUndoCommand>

#include <cstdint>
#include <memory>

namespace tarebowl::ui {

class FoodDesk;

/// A change of the collection that was made and can be taken back. Taking it back is a change of its own, so
/// that redoing takes back that one.
class ChangeCommand : public QUndoCommand {
 public:
  ChangeCommand(FoodDesk& desk, std::int64_t change, store::FoodId food, const QString& what);
  void redo() override;
  void undo() override;

 private:
  void takeBack();

  FoodDesk& desk_;
  std::shared_ptr<std::int64_t> change_;  // the newest; the answer to a write may outlive this command
  store::FoodId food_;
  bool first_ = true;  // pushing it calls redo(), and it is already done
};

}  // namespace tarebowl::ui
