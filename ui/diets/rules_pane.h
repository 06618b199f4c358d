// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/house_rule.h"

#include <QWidget>

#include <functional>
#include <vector>

class QComboBox;
class QLineEdit;
class QVBoxLayout;

namespace tarebowl::ui {

class DietDesk;

/// What is asked of the diet beside its targets: so many foods of a group, so much of it from a group. Rules
/// of the targets are shown; the diet's own are added and taken away here.
class RulesPane : public QWidget {
  Q_OBJECT
 public:
  explicit RulesPane(DietDesk& desk, QWidget* parent = nullptr);

 signals:
  void refused(const QString& why);

 private:
  QWidget* makeChoiceAdder();
  QWidget* makeShareAdder();
  void refresh();
  void addLine(const QString& sentence, const std::function<void()>& remove);
  void addChoice();
  void addShare();

  DietDesk& desk_;
  QVBoxLayout* lines_;
  QComboBox* choiceGroup_;
  QLineEdit* atLeast_;
  QLineEdit* atMost_;
  QLineEdit* gramsEach_;
  QComboBox* shareGroup_;
  QLineEdit* shareMin_;
  QLineEdit* shareMax_;
  QComboBox* shareBasis_;
  std::vector<animal::ChoiceRule> shownChoices_;
  std::vector<animal::ShareRule> shownShares_;
  std::vector<std::string> shownGroups_;
};

/// "2 to 3 foods of the group cooked vegetable, at least 5 g each".
[[nodiscard]] QString choiceText(const animal::ChoiceRule& choice);
/// "at most 10 % of the dry matter from fruit".
[[nodiscard]] QString shareText(const animal::ShareRule& share);

}  // namespace tarebowl::ui
