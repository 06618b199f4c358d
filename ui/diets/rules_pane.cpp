// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rules_pane.h"

#include "ui/diets/diet_desk.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <set>

namespace tarebowl::ui {
namespace {

constexpr quantity::Basis kBases[] = {quantity::Basis::DryMatter, quantity::Basis::AsFed,
                                      quantity::Basis::Energy};

QString wholeText(quantity::Basis basis) {
  switch (basis) {
    case quantity::Basis::AsFed:
      return RulesPane::tr("the mass as fed");
    case quantity::Basis::Energy:
      return RulesPane::tr("the energy");
    default:
      return RulesPane::tr("the dry matter");
  }
}

QLineEdit* makeField(const QString& name, const QString& hint) {
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  field->setFixedWidth(field->fontMetrics().averageCharWidth() * 8 + 20);
  return field;
}

std::vector<std::string> groupsOf(const diet::BalanceProblem& problem) {
  std::set<std::string> groups;
  for (const diet::DietFood& food : problem.foods)
    if (!food.group.empty()) groups.insert(food.group);
  return {groups.begin(), groups.end()};
}

/// Nothing where the field is empty; `unread` takes the text that is no number.
std::optional<double> numberIn(const QLineEdit& field, QString& unread) {
  if (field.text().trimmed().isEmpty()) return std::nullopt;
  const auto number = readNumber(field.text());
  if (!number) unread = field.text();
  return number;
}

bool isWhole(const std::optional<double>& number) {
  return !number || *number == std::floor(*number);
}

template <class Rule>
std::vector<Rule> without(std::vector<Rule> rules, const Rule& rule) {
  const auto found = std::ranges::find(rules, rule);
  if (found != rules.end()) rules.erase(found);
  return rules;
}

}  // namespace

QString choiceText(const animal::ChoiceRule& choice) {
  const QString group = QString::fromStdString(choice.group);
  QString count =
      choice.atMost && *choice.atMost == choice.atLeast
          ? RulesPane::tr("%1 of the group %2").arg(choice.atLeast).arg(group)
      : choice.atMost
          ? RulesPane::tr("%1 to %2 of the group %3").arg(choice.atLeast).arg(*choice.atMost).arg(group)
          : RulesPane::tr("at least %1 of the group %2").arg(choice.atLeast).arg(group);
  if (choice.minEach > quantity::Grams(0))
    count += RulesPane::tr(", at least %1 g of each").arg(stated(choice.minEach.value()));
  return count;
}

QString shareText(const animal::ShareRule& share) {
  const QString group = QString::fromStdString(share.group);
  const QString whole = wholeText(share.basis);
  if (share.min && share.max)
    return RulesPane::tr("%1 to %2 of %3 from %4")
        .arg(percent(*share.min), percent(*share.max), whole, group);
  return share.max
             ? RulesPane::tr("at most %1 of %2 from %3").arg(percent(*share.max), whole, group)
             : RulesPane::tr("at least %1 of %2 from %3").arg(percent(share.min.value_or(0)), whole, group);
}

RulesPane::RulesPane(DietDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      lines_(new QVBoxLayout),
      choiceGroup_(new QComboBox),
      atLeast_(makeField(tr("At least so many foods of the group"), tr("min"))),
      atMost_(makeField(tr("At most so many foods of the group"), tr("max"))),
      gramsEach_(makeField(tr("At least so many grams of each"), tr("g each"))),
      shareGroup_(new QComboBox),
      shareMin_(makeField(tr("At least this share, in percent"), tr("min %"))),
      shareMax_(makeField(tr("At most this share, in percent"), tr("max %"))),
      shareBasis_(new QComboBox) {
  choiceGroup_->setAccessibleName(tr("Food group of the structure rule"));
  shareGroup_->setAccessibleName(tr("Food group of the share"));
  shareBasis_->setAccessibleName(tr("What the share is of"));
  for (const quantity::Basis basis : kBases) shareBasis_->addItem(tr("of %1").arg(wholeText(basis)));
  lines_->setSpacing(3);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(11, 8, 11, 9);
  layout->setSpacing(7);
  layout->addLayout(lines_);
  layout->addWidget(makeChoiceAdder());
  layout->addWidget(makeShareAdder());
  layout->addStretch(1);
  connect(&desk, &DietDesk::opened, this, &RulesPane::refresh);
  connect(&desk, &DietDesk::restructured, this, &RulesPane::refresh);
  connect(&desk, &DietDesk::balanceChanged, this, &RulesPane::refresh);
  refresh();
}

QWidget* RulesPane::makeChoiceAdder() {
  auto* row = new QWidget;
  auto* add = new QPushButton(tr("Ask for it"));
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  layout->addWidget(new QLabel(tr("foods of")));
  for (QWidget* widget : std::initializer_list<QWidget*>{choiceGroup_, atLeast_, atMost_, gramsEach_, add})
    layout->addWidget(widget);
  layout->addStretch(1);
  connect(add, &QPushButton::clicked, this, &RulesPane::addChoice);
  return row;
}

QWidget* RulesPane::makeShareAdder() {
  auto* row = new QWidget;
  auto* add = new QPushButton(tr("Set the share"));
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  layout->addWidget(new QLabel(tr("share of")));
  for (QWidget* widget : std::initializer_list<QWidget*>{shareGroup_, shareMin_, shareMax_, shareBasis_, add})
    layout->addWidget(widget);
  layout->addStretch(1);
  connect(add, &QPushButton::clicked, this, &RulesPane::addShare);
  return row;
}

void RulesPane::addLine(const QString& sentence, const std::function<void()>& remove) {
  auto* row = new QWidget;
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(new QLabel(sentence), 1);
  if (remove) {
    auto* button = new QToolButton;
    button->setText(tr("Remove"));
    button->setProperty("plain", true);
    button->setAccessibleName(tr("Remove the rule: %1").arg(sentence));
    connect(button, &QToolButton::clicked, this, remove);
    layout->addWidget(button);
  }
  lines_->addWidget(row);
}

void RulesPane::refresh() {
  const diet::BalanceProblem& problem = desk_.problem();
  const auto groups = groupsOf(problem);
  if (problem.choices == shownChoices_ && problem.shares == shownShares_ && groups == shownGroups_) return;
  shownChoices_ = problem.choices;
  shownShares_ = problem.shares;
  shownGroups_ = groups;
  while (QLayoutItem* item = lines_->takeAt(0)) {
    if (item->widget() != nullptr) item->widget()->deleteLater();
    delete item;
  }
  const auto own = ownChoices(desk_.draft());
  const auto ownOfGroups = ownShares(desk_.draft());
  const auto addRules = [this](const auto& all, const auto& mine, auto text, auto set) {
    for (const auto& rule : all) {
      const bool isOwn = std::ranges::find(mine, rule) != mine.end();
      addLine(isOwn ? text(rule) : tr("%1 (by the targets)").arg(text(rule)),
              isOwn && !desk_.isReadOnly() ? std::function<void()>([=] { set(without(mine, rule)); })
                                           : std::function<void()>());
    }
  };
  addRules(problem.choices, own, &choiceText, [this](const auto& rules) { desk_.setChoices(rules); });
  addRules(problem.shares, ownOfGroups, &shareText, [this](const auto& rules) { desk_.setShares(rules); });
  if (problem.choices.empty() && problem.shares.empty())
    addLine(tr("Nothing is asked of the diet's structure yet."), {});
  for (QComboBox* box : {choiceGroup_, shareGroup_}) {
    const QString chosen = box->currentText();
    box->clear();
    for (const std::string& group : groups) box->addItem(QString::fromStdString(group));
    box->setCurrentText(chosen);
  }
}

void RulesPane::addChoice() {
  QString unread;
  const auto least = numberIn(*atLeast_, unread);
  const auto most = numberIn(*atMost_, unread);
  const auto each = numberIn(*gramsEach_, unread);
  const bool isSound = unread.isEmpty() && (least || most) && isWhole(least) && isWhole(most) &&
                       (!least || !most || *least <= *most) && !choiceGroup_->currentText().isEmpty();
  if (!isSound)
    return emit refused(thousandsAdviceOr(
        unread, tr("A structure rule needs a group, and a whole number of foods at least or at most.")));
  auto own = ownChoices(desk_.draft());
  animal::ChoiceRule rule{.group = choiceGroup_->currentText().toStdString(),
                          .atLeast = static_cast<int>(least.value_or(0)),
                          .atMost = most ? std::optional(static_cast<int>(*most)) : std::nullopt,
                          .minEach = quantity::Grams(each.value_or(0))};
  std::erase_if(own, [&](const animal::ChoiceRule& other) { return other.group == rule.group; });
  own.push_back(std::move(rule));
  for (QLineEdit* field : {atLeast_, atMost_, gramsEach_}) field->clear();
  desk_.setChoices(own);
}

void RulesPane::addShare() {
  QString unread;
  const auto min = numberIn(*shareMin_, unread);
  const auto max = numberIn(*shareMax_, unread);
  const bool isSound = unread.isEmpty() && (min || max) && min.value_or(0) <= max.value_or(100) &&
                       max.value_or(0) <= 100 && !shareGroup_->currentText().isEmpty();
  if (!isSound)
    return emit refused(thousandsAdviceOr(
        unread, tr("A share needs a group, and a percentage at least or at most, up to 100.")));
  const std::string group = shareGroup_->currentText().toStdString();
  animal::ShareRule rule;
  rule.id = "own share of " + group;
  rule.group = group;
  if (min) rule.min = *min / 100.0;
  if (max) rule.max = *max / 100.0;
  rule.basis = kBases[shareBasis_->currentIndex()];
  rule.origin.provenance = animal::Provenance::HouseRule;
  auto own = ownShares(desk_.draft());
  std::erase_if(own, [&](const animal::ShareRule& other) { return other.id == rule.id; });
  own.push_back(std::move(rule));
  for (QLineEdit* field : {shareMin_, shareMax_}) field->clear();
  desk_.setShares(own);
}

}  // namespace tarebowl::ui
