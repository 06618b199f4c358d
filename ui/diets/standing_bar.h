// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/desk_diet.h"

#include <QFrame>
#include <QStringList>

class QLabel;
class QPushButton;

namespace tarebowl::ui {

class VersionDocument;

/// What became of the things that the version on the desk rests on: foods that are gone, targets that
/// changed, another window that was faster. Hidden where there is nothing to tell.
class StandingBar : public QFrame {
  Q_OBJECT
 public:
  explicit StandingBar(VersionDocument& document, QWidget* parent = nullptr);

 private:
  void show();

  VersionDocument& document_;
  QLabel* words_;
  QPushButton* newer_;
  QPushButton* theirs_;
  QPushButton* mine_;
};

/// A sentence each.
[[nodiscard]] QStringList standingSentences(const transfer::DeskDiet& desk);

}  // namespace tarebowl::ui
