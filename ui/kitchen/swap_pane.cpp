// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/swap_pane.h"

#include "ui/kitchen/swap_delegate.h"
#include "ui/kitchen/swap_model.h"
#include "ui/kitchen/swap_seeker.h"
#include "ui/kitchen/swap_sentences.h"
#include "ui/shared/segmented_switch.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace tarebowl::ui {
namespace {

constexpr int kTitlePoints = 22;
constexpr int kWordPoints = 14;
constexpr int kButtonPoints = 18;

QLabel* label(int points, bool isBold, bool isSoft) {
  auto* made = new QLabel;
  QFont font = made->font();
  font.setPointSize(points);
  font.setBold(isBold);
  made->setFont(font);
  made->setWordWrap(true);
  made->setProperty("soft", isSoft);
  return made;
}

/// What a swap gives, whichever candidates it was sought among.
using FoodsGiven = std::vector<std::pair<std::string, quantity::Grams>>;
FoodsGiven foodsGiven(const diet::SwapRequest& request, const diet::Swap& swap) {
  FoodsGiven given;
  for (const diet::SwapPart& part : swap.parts)
    given.emplace_back(request.candidates[part.candidate].id, part.grams);
  return given;
}

QPushButton* button(const QString& text) {
  auto* made = new QPushButton(text);
  QFont font = made->font();
  font.setPointSize(kButtonPoints);
  made->setFont(font);
  made->setMinimumHeight(54);
  made->setFocusPolicy(Qt::TabFocus);
  return made;
}

}  // namespace

SwapPane::SwapPane(QWidget* parent)
    : QWidget(parent),
      seeker_(new SwapSeeker(this)),
      model_(new SwapModel(this)),
      title_(label(kTitlePoints, true, false)),
      missing_(label(kButtonPoints, false, false)),
      counted_(new SegmentedSwitch(tr("What stays near the approved bowl (O)"),
                                   {tr("as offered"), tr("as eaten  (O)")})),
      state_(label(kWordPoints, false, true)),
      list_(new QListView),
      equal_(label(kWordPoints, false, false)),
      others_(label(kWordPoints, false, true)),
      use_(button(tr("Use this  (Enter)"))),
      back_(button(tr("Back  (Esc)"))) {
  build();
  connect(seeker_, &SwapSeeker::offersChanged, this, &SwapPane::showOffers);
  connect(seeker_, &SwapSeeker::failed, this, &SwapPane::say);
  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, &SwapPane::showChosen);
  connect(list_, &QListView::doubleClicked, this, &SwapPane::useChosen);
  connect(counted_, &SegmentedSwitch::chosen, this, [this] {
    list_->setFocus();
    emit countedChosen();
  });
  connect(use_, &QPushButton::clicked, this, &SwapPane::useChosen);
  connect(back_, &QPushButton::clicked, this, &SwapPane::dismissed);
}

void SwapPane::build() {
  title_->setText(tr("Not available"));
  use_->setObjectName(QStringLiteral("primary"));
  list_->setModel(model_);
  list_->setItemDelegate(new SwapDelegate(list_));
  list_->setAccessibleName(tr("What to give instead"));
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setResizeMode(QListView::Adjust);  // rows wrap their words
  list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  list_->installEventFilter(this);
  missing_->setAccessibleDescription(tr("What is missing"));
  counted_->setToolTips({tr("Amounts as they go into the bowl (O)"),
                         tr("By what this group ate of each food in eight weeks (O)")});
  counted_->setCurrent(0);
  counted_->hide();
  state_->setAccessibleDescription(tr("How far the search is"));
  auto* card = new QFrame;
  card->setProperty("card", true);
  auto* inCard = new QVBoxLayout(card);
  inCard->setContentsMargins(2, 2, 2, 2);
  inCard->addWidget(list_);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(use_, 2);
  buttons->addWidget(back_, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(18, 12, 18, 14);
  layout->setSpacing(8);
  auto* head = new QHBoxLayout;
  head->addWidget(title_);
  head->addSpacing(14);
  head->addWidget(missing_, 1);
  head->addWidget(counted_);
  layout->addLayout(head);
  layout->addWidget(state_);
  layout->addWidget(card, 1);
  layout->addWidget(equal_);
  layout->addWidget(others_);
  layout->addLayout(buttons);
  setFocusProxy(list_);
}

bool SwapPane::isSeeking() const {
  return seeker_->isBusy();
}

void SwapPane::offerCounting() {
  counted_->show();
}

transfer::CountedAs SwapPane::counted() const {
  return counted_->current() == 1 ? transfer::CountedAs::Eaten : transfer::CountedAs::Offered;
}

void SwapPane::turnCounting() {
  if (counted_->isHidden()) return;
  counted_->setCurrent(counted_->current() == 1 ? 0 : 1);
  emit countedChosen();
}

void SwapPane::seek(diet::SwapRequest request, transfer::Candidates among) {
  missing_->setText(missingText(request));
  seeker_->seek(std::move(request), among);
  list_->setFocus();
}

void SwapPane::say(const QString& why) {
  seeker_->cancel();
  model_->show({});
  state_->setText(why);
  showChosen();
}

void SwapPane::showOffers() {
  const SwapOffers& offers = seeker_->offers();
  const SwapOffer* before = chosen();
  const std::optional<FoodsGiven> kept =
      before != nullptr && list_->currentIndex().row() > 0
          ? std::optional(foodsGiven(*model_->offers().request, before->swap))
          : std::nullopt;
  model_->show(offers);
  const auto found = std::ranges::find_if(offers.offers, [&](const SwapOffer& offer) {
    return kept && foodsGiven(*offers.request, offer.swap) == *kept;
  });
  choose(found == offers.offers.end() ? 0 : static_cast<int>(found - offers.offers.begin()));
  if (!offers.isComplete)
    state_->setText(tr("Looking at what is on hand…"));
  else if (offers.offers.empty())
    state_->setText(tr("Nothing on hand will do. Ask the nutritionist."));
  else if (counted() == transfer::CountedAs::Eaten)
    state_->setText(
        tr("The nearest first, by what is eaten of each food; one that nobody knows counts as eaten "
           "whole. Choose by arrows or number."));
  else
    state_->setText(tr("The nearest first. Choose by arrows or number."));
  others_->setText(othersText(offers));
  showChosen();
}

const SwapOffer* SwapPane::chosen() const {
  const QModelIndex index = list_->currentIndex();
  return index.isValid() ? &model_->offers().offers.at(static_cast<std::size_t>(index.row())) : nullptr;
}

void SwapPane::showChosen() {
  const SwapOffer* offer = chosen();
  use_->setEnabled(offer != nullptr);
  equal_->setText(offer != nullptr ? equalText(*model_->offers().request, *offer) : QString());
  equal_->setVisible(!equal_->text().isEmpty());
}

void SwapPane::choose(int row) {
  if (row < model_->rowCount()) list_->setCurrentIndex(model_->index(row));
}

void SwapPane::use(const std::optional<diet::Swap>& swap) {
  if (swap) emit used(model_->offers(), *swap);
}

void SwapPane::useChosen() {
  if (const SwapOffer* offer = chosen()) use(offer->swap);
}

bool SwapPane::take(const QKeyEvent& key) {
  if (key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) return false;
  const SwapOffer* offer = chosen();
  switch (key.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
      useChosen();
      return true;
    case Qt::Key_Escape:
      seeker_->cancel();
      emit dismissed();
      return true;
    case Qt::Key_O:
      turnCounting();
      return true;
    case Qt::Key_D:
      if (offer != nullptr) use(offer->equalDryMatter);
      return true;
    case Qt::Key_E:
      if (offer != nullptr) use(offer->equalEnergy);
      return true;
    default:
      break;
  }
  if (key.key() < Qt::Key_1 || key.key() > Qt::Key_9) return false;
  choose(key.key() - Qt::Key_1);
  return true;
}

bool SwapPane::eventFilter(QObject* watched, QEvent* event) {
  if (watched == list_ && event->type() == QEvent::KeyPress && take(*static_cast<QKeyEvent*>(event)))
    return true;
  return QWidget::eventFilter(watched, event);
}

}  // namespace tarebowl::ui
