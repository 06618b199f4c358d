// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/reason_bar.h"

#include "ui/shared/number_reading.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <utility>

namespace tarebowl::ui {

ReasonBar::ReasonBar(QWidget* parent)
    : QFrame(parent),
      question_(new QLabel),
      amount_(new QLineEdit),
      sd_(new QLineEdit),
      unit_(new QLabel),
      reason_(new QLineEdit),
      do_(new QPushButton),
      other_(new QPushButton) {
  setProperty("card", true);
  setAccessibleName(tr("A reason is needed"));
  amount_->setAccessibleName(tr("Value"));
  amount_->setPlaceholderText(tr("value"));
  sd_->setAccessibleName(tr("Standard deviation, where it is known"));
  sd_->setPlaceholderText(tr("± SD"));
  reason_->setAccessibleName(tr("Reason"));
  reason_->setPlaceholderText(tr("Why? This is kept with it."));
  question_->setWordWrap(true);
  for (QLineEdit* field : {amount_, sd_}) field->setFixedWidth(fontMetrics().averageCharWidth() * 12);
  auto* cancel = new QPushButton(tr("Cancel"));
  auto* fields = new QHBoxLayout;
  fields->setSpacing(7);
  for (QWidget* widget : std::initializer_list<QWidget*>{amount_, sd_, unit_}) fields->addWidget(widget);
  fields->addWidget(reason_, 1);
  for (QPushButton* button : {do_, other_, cancel}) fields->addWidget(button);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(11, 8, 11, 9);
  layout->setSpacing(6);
  layout->addWidget(question_);
  layout->addLayout(fields);
  connect(do_, &QPushButton::clicked, this, &ReasonBar::finish);
  connect(other_, &QPushButton::clicked, this, [this] {
    const auto done = std::exchange(otherDone_, {});
    dismiss();
    if (done) done();
  });
  connect(cancel, &QPushButton::clicked, this, &ReasonBar::dismiss);
  for (QLineEdit* field : {amount_, sd_, reason_}) {
    connect(field, &QLineEdit::textChanged, this, &ReasonBar::showReady);
    connect(field, &QLineEdit::returnPressed, this, &ReasonBar::finish);
  }
  hide();
}

void ReasonBar::ask(const QString& question, const QString& unit, const QString& verb,
                    std::function<void(const Answer&)> done) {
  question_->setText(question);
  unit_->setText(unit);
  for (QWidget* widget : std::initializer_list<QWidget*>{amount_, sd_, unit_})
    widget->setVisible(!unit.isEmpty());
  for (QLineEdit* field : {amount_, sd_, reason_}) field->clear();
  do_->setText(verb);
  other_->hide();
  done_ = std::move(done);
  showReady();
  show();
  (unit.isEmpty() ? reason_ : amount_)->setFocus();
}

void ReasonBar::offer(const QString& verb, std::function<void()> done) {
  other_->setText(verb);
  other_->show();
  otherDone_ = std::move(done);
}

void ReasonBar::showReady() {
  const bool wantsAmount = !unit_->text().isEmpty();
  const bool amountReads = !wantsAmount || readNumber(amount_->text());
  const bool sdReads = sd_->text().isEmpty() || readNumber(sd_->text());
  do_->setEnabled(!reason_->text().trimmed().isEmpty() && amountReads && sdReads);
}

void ReasonBar::finish() {
  if (!do_->isEnabled()) return;
  Answer answer{.reason = reason_->text().trimmed(), .amount = {}, .sd = {}};
  if (!unit_->text().isEmpty()) {
    answer.amount = readNumber(amount_->text());
    answer.sd = readNumber(sd_->text());
  }
  const auto done = std::exchange(done_, {});
  dismiss();
  if (done) done(answer);
}

void ReasonBar::dismiss() {
  done_ = {};
  otherDone_ = {};
  hide();
}

void ReasonBar::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return dismiss();
  QFrame::keyPressEvent(event);
}

}  // namespace tarebowl::ui
