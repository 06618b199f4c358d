// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/approval_form.h"

#include "ui/shared/date_field.h"
#include "ui/shared/days.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {

ApprovalForm::ApprovalForm(QWidget* parent)
    : QFrame(parent),
      from_(new DateField),
      days_(new QSpinBox),
      reason_(new QLineEdit),
      approve_(new QPushButton(tr("Approve"))) {
  setProperty("card", true);
  setAccessibleName(tr("Approval of this version"));
  from_->setDate(QDate::currentDate());
  from_->setAccessibleName(tr("Fed from this day"));
  days_->setRange(0, 60);
  days_->setSpecialValueText(tr("at once"));
  days_->setSuffix(tr(" days"));
  days_->setAccessibleName(tr("Phased in over so many days"));
  reason_->setPlaceholderText(tr("Why? This is kept with it."));
  reason_->setAccessibleName(tr("Reason"));
  auto* words =
      new QLabel(tr("Approved, this version never changes: grams, targets and composition are kept as they "
                    "are now. Local rules, a qualified nutritionist and a licensed vet come first."));
  words->setWordWrap(true);
  auto* cancel = new QPushButton(tr("Cancel"));
  auto* fields = new QHBoxLayout;
  fields->setSpacing(7);
  fields->addWidget(new QLabel(tr("fed from")));
  fields->addWidget(from_);
  fields->addWidget(new QLabel(tr("phased in")));
  fields->addWidget(days_);
  fields->addWidget(reason_, 1);
  fields->addWidget(approve_);
  fields->addWidget(cancel);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(11, 8, 11, 9);
  layout->setSpacing(6);
  layout->addWidget(words);
  layout->addLayout(fields);
  const auto showReady = [this] { approve_->setEnabled(!reason_->text().trimmed().isEmpty()); };
  connect(reason_, &QLineEdit::textChanged, this, showReady);
  connect(reason_, &QLineEdit::returnPressed, this, &ApprovalForm::finish);
  connect(approve_, &QPushButton::clicked, this, &ApprovalForm::finish);
  connect(cancel, &QPushButton::clicked, this, &QWidget::hide);
  showReady();
  hide();
}

void ApprovalForm::ask(Done done) {
  done_ = std::move(done);
  reason_->clear();
  show();
  reason_->setFocus();
}

void ApprovalForm::finish() {
  if (reason_->text().trimmed().isEmpty() || !done_) return;
  hide();
  const auto done = std::exchange(done_, {});
  done({.from = toDate(from_->date()), .phaseInDays = days_->value()}, reason_->text().trimmed());
}

void ApprovalForm::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return hide();
  QFrame::keyPressEvent(event);
}

}  // namespace tarebowl::ui
