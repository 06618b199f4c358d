// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/guide_panel.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr int kMargin = 12;
constexpr int kWidth = 400;
constexpr int kHeight = 290;

}  // namespace

GuidePanel::GuidePanel(QWidget* parent)
    : QWidget(parent, Qt::Tool),
      flows_(guideFlows()),
      flow_(new QComboBox),
      place_(new QLabel),
      text_(new QLabel),
      show_(new QPushButton(tr("Show me"))),
      back_(new QPushButton(tr("Back"))),
      next_(new QPushButton(tr("Next"))) {
  setWindowTitle(tr("Guide"));
  setAccessibleName(tr("Guide"));
  flow_->setAccessibleName(tr("What the guide leads through"));
  for (const GuideFlow& flow : flows_) flow_->addItem(flow.title);
  flow_->setToolTip(tr("Three people's work, on the invented sample"));
  place_->setProperty("soft", true);
  text_->setWordWrap(true);
  text_->setTextFormat(Qt::RichText);
  text_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  auto* sample = new QPushButton(tr("Open the invented sample"));
  sample->setToolTip(tr("The guide speaks of its animals and foods"));
  auto* close = new QPushButton(tr("Close"));
  show_->setToolTip(tr("Goes to the room, and to the control that is named first"));
  back_->setToolTip(tr("The step before"));
  next_->setToolTip(tr("The next step"));
  close->setToolTip(tr("Puts the guide away (Esc); Help brings it back"));
  auto* steps = new QHBoxLayout;
  for (QPushButton* button : {show_, back_, next_}) steps->addWidget(button);
  auto* foot = new QHBoxLayout;
  foot->addWidget(sample);
  foot->addStretch(1);
  foot->addWidget(close);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kMargin, kMargin, kMargin, kMargin);
  for (QWidget* part : std::initializer_list<QWidget*>{flow_, place_}) layout->addWidget(part);
  layout->addWidget(text_, 1);
  layout->addLayout(steps);
  layout->addLayout(foot);
  setFixedWidth(kWidth);
  setMinimumHeight(kHeight);
  connect(flow_, &QComboBox::activated, this, [this] { go(0); });
  connect(back_, &QPushButton::clicked, this, [this] { go(step_ - 1); });
  connect(next_, &QPushButton::clicked, this, [this] { go(step_ + 1); });
  connect(sample, &QPushButton::clicked, this, &GuidePanel::sampleWanted);
  connect(close, &QPushButton::clicked, this, &QWidget::close);
  connect(show_, &QPushButton::clicked, this, [this] {
    emit roomWanted(step().room);
    emit shown(controlsOf(step()));
  });
}

const GuideStep& GuidePanel::step() const {
  return flows_.at(static_cast<std::size_t>(flow_->currentIndex())).steps.at(static_cast<std::size_t>(step_));
}

void GuidePanel::begin() {
  go(step_);
  show();
  raise();
  activateWindow();
  (next_->isEnabled() ? next_ : show_)->setFocus();
}

void GuidePanel::go(int step) {
  step_ = step;
  const int count = static_cast<int>(flows_.at(static_cast<std::size_t>(flow_->currentIndex())).steps.size());
  place_->setText(tr("step %1 of %2").arg(step_ + 1).arg(count));
  text_->setText(htmlOf(this->step()));
  text_->setAccessibleName(this->step().text);
  const bool isLast = step_ + 1 == count;
  if (isLast && next_->hasFocus()) show_->setFocus();
  next_->setEnabled(!isLast);
  back_->setEnabled(step_ > 0);
  emit roomWanted(this->step().room);
}

void GuidePanel::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    close();
    return;
  }
  QWidget::keyPressEvent(event);
}

}  // namespace tarebowl::ui
