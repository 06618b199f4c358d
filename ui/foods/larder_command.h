// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/larder.h"

#include <QUndoCommand>

namespace tarebowl::ui {

class FoodDesk;

/// One edit that was done and can be taken back. What the clerk refuses empties the way back: it would lead
/// to something that is no longer there.
class LarderCommand : public QUndoCommand {
 public:
  LarderCommand(FoodDesk& desk, LarderEdit done, const QString& what);
  void redo() override;
  void undo() override;

 private:
  FoodDesk& desk_;
  LarderEdit edit_;
  bool first_ = true;  // pushing it calls redo(), and it is already done
};

/// The edit turned round.
[[nodiscard]] LarderEdit inverse(const LarderEdit& edit);
/// The food it is about.
[[nodiscard]] FoodKey foodOf(const LarderEdit& edit);

}  // namespace tarebowl::ui
