// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rung_detail.h"

#include "ui/diets/contribution_rows.h"
#include "ui/diets/diet_desk.h"
#include "ui/diets/ladder_model.h"
#include "ui/diets/target_names.h"
#include "ui/shared/contribution_chart.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

QLineEdit* boundField(const QString& accessibleName, QWidget* parent) {
  auto* field = new QLineEdit(parent);
  field->setAlignment(Qt::AlignRight);
  field->setPlaceholderText(QStringLiteral("–"));
  field->setAccessibleName(accessibleName);
  field->setFixedWidth(field->fontMetrics().averageCharWidth() * 12);
  return field;
}

/// As many as the field has room for: a bound in kJ that was stated in kcal has no end.
QString inSixFigures(double bound) {
  return stated(QString::number(bound, 'g', 6).toDouble());
}

QLabel* softLabel(const QString& text = {}) {
  auto* label = new QLabel(text);
  label->setProperty("soft", true);
  return label;
}

}  // namespace

RungDetail::RungDetail(DietDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      title_(softLabel()),
      unit_(softLabel()),
      min_(boundField(tr("Minimum of the target"), this)),
      max_(boundField(tr("Maximum of the target"), this)),
      about_(softLabel()),
      chart_(new ContributionChart) {
  build();
  connect(min_, &QLineEdit::editingFinished, this, &RungDetail::takeBounds);
  connect(max_, &QLineEdit::editingFinished, this, &RungDetail::takeBounds);
  connect(&desk, &DietDesk::balanceChanged, this, &RungDetail::refresh);
  refresh();
}

void RungDetail::build() {
  QFont bold = title_->font();
  bold.setBold(true);
  title_->setFont(bold);
  title_->setWordWrap(true);
  about_->setWordWrap(true);
  about_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* bounds = new QHBoxLayout;
  bounds->setSpacing(7);
  bounds->addWidget(softLabel(tr("min")));
  bounds->addWidget(min_);
  bounds->addWidget(softLabel(tr("max")));
  bounds->addWidget(max_);
  bounds->addWidget(unit_);
  bounds->addStretch(1);
  auto* explore = new QToolButton;
  explore->setText(tr("Explore"));
  explore->setProperty("plain", true);
  explore->setToolTip(tr("Moves the bound over a range and shows what has to give (Ctrl+E)"));
  connect(explore, &QToolButton::clicked, this, [this] {
    if (rung_) emit exploreWanted(*rung_);
  });
  bounds->addWidget(explore);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 6, 0, 0);
  layout->setSpacing(6);
  layout->addWidget(title_);
  layout->addWidget(chart_);
  layout->addLayout(bounds);
  layout->addWidget(about_);
  layout->addStretch(1);
}

void RungDetail::show(std::optional<RungRef> rung) {
  rung_ = rung;
  refresh();
}

void RungDetail::refresh() {
  setVisible(rung_.has_value());
  if (!rung_) return;
  const diet::BalanceProblem& problem = desk_.problem();
  const ContributionChartState state = contributionRows(desk_.draft(), *rung_);
  const bool empty = state.rows.empty();
  title_->setText(empty ? tr("%1: nothing in the bowl").arg(rungName(problem, *rung_)) : state.title);
  chart_->setVisible(!empty);
  chart_->show(state);
  unit_->setText(rungUnit(problem, *rung_));
  const Bounds bounds = boundsOf(problem, *rung_);
  const auto fill = [&](QLineEdit& field, const std::optional<double>& bound) {
    if (!field.hasFocus() || !field.isModified())
      field.setText(bound ? inSixFigures(shownValue(*rung_, *bound)) : QString());
  };
  fill(*min_, bounds.min);
  fill(*max_, bounds.max);
  QStringList about;
  for (const diet::TargetBalance& target : desk_.balance().targets)
    if (refOf(target) == *rung_) about = rungRemarks(problem, target);
  about << originText(problem, *rung_);
  about.removeAll(QString());
  about_->setText(about.join(QStringLiteral(" · ")));
  about_->setVisible(!about.isEmpty());
}

/// Takes the bound of a field that was typed in; an empty one is no bound. False where it holds no number.
bool RungDetail::take(QLineEdit& field, std::optional<double>& bound) {
  if (!field.isModified()) return true;
  field.setModified(false);
  const QString text = field.text().trimmed();
  const auto number = readNumber(text);
  if (!number && !text.isEmpty()) {
    emit desk_.refused(
        thousandsAdviceOr(text, tr("“%1” is no number of at least zero: the bound stays.").arg(text)));
    return false;
  }
  bound = number ? std::optional(*number / shownValue(*rung_, 1.0)) : std::nullopt;
  return true;
}

void RungDetail::takeBounds() {
  if (!rung_ || (!min_->isModified() && !max_->isModified())) return;
  Bounds bounds = boundsOf(desk_.problem(), *rung_);
  const bool readsMin = take(*min_, bounds.min);
  const bool readsMax = take(*max_, bounds.max);
  if (!readsMin || !readsMax || !desk_.setBounds(*rung_, bounds)) refresh();
}

}  // namespace tarebowl::ui
