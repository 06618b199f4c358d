// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/check_sentences.h"
#include "ui/shared/card.h"

#include <vector>

class QVBoxLayout;

namespace tarebowl::ui {

/// What is doubtful about a food, and what to do about it.
class ChecksCard : public QFrame {
  Q_OBJECT
 public:
  explicit ChecksCard(QWidget* parent = nullptr);
  void show(const std::vector<CheckSentence>& sentences);

 private:
  QVBoxLayout* lines_;
};

/// What is wrong first, then what is doubtful, then what is well.
void orderByWeight(std::vector<CheckSentence>& sentences);

}  // namespace tarebowl::ui
