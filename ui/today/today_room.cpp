// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/today_room.h"

#include "core/intake/time_of_sheet.h"
#include "core/store/reading.h"
#include "ui/collection/collection_state.h"
#include "ui/collection/conflict_text.h"
#include "ui/shared/banner.h"
#include "ui/shared/card.h"
#include "ui/shared/days.h"
#include "ui/shared/reason_bar.h"
#include "ui/today/row_button.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kHeadingPoints = 20;
constexpr int kRowPoints = 13;

QString dayHeading(quantity::Date day) {
  return QLocale().toString(toQDate(day), QLocale::LongFormat);
}

}  // namespace

TodayRoom::TodayRoom(OpenCollection& collection, Clock today, QWidget* parent)
    : Room(parent),
      collection_(collection),
      today_(std::move(today)),
      heading_(new QLabel),
      writeDown_(new QPushButton(tr("Write down what was seen…"))),
      banner_(makeBanner()),
      reason_(new ReasonBar) {
  QFont font = heading_->font();
  font.setPointSize(kHeadingPoints);
  font.setBold(true);
  heading_->setFont(font);
  auto* page = new QWidget;
  cards_ = new QVBoxLayout(page);
  cards_->setContentsMargins(0, 0, 8, 0);
  cards_->setSpacing(12);
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setWidget(page);
  scroll->setAccessibleName(tr("What is due today"));
  scroll->setWhatsThis(
      tr("What is due: bowls to prepare and weigh, leftovers to weigh, control pans that still stand, swaps "
         "and diets that wait for a decision. It is read from the diets in force on this day and from what "
         "the kitchen wrote down; a row leads to where it is done."));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(20, 14, 12, 8);
  auto* head = new QHBoxLayout;
  head->addWidget(heading_, 1);
  head->addWidget(writeDown_);
  layout->addLayout(head);
  for (QWidget* part : std::initializer_list<QWidget*>{banner_, reason_}) layout->addWidget(part);
  layout->addWidget(scroll, 1);
  writeDown_->setToolTip(tr("Faeces, appetite, a limp, a treatment … of an animal or a group"));
  connect(writeDown_, &QPushButton::clicked, this, &TodayRoom::observationWanted);
  const auto readAgain = [this] {
    old_ = true;
    if (isVisible()) read();
  };
  collection_.whenOpened(this, [this] {
    overview_.reset();
    reason_->dismiss();
    if (collection_.file()) banner_->hide();
    showOverview();
    read();  // also before the window is shown: it is what is seen first
  });
  connect(&collection_, &OpenCollection::busyChanged, this, &Room::stateChanged);
  connect(&collection_, &OpenCollection::outdated, this, readAgain);
  connect(&collection_, &OpenCollection::written, this, readAgain);
  connect(&collection_, &OpenCollection::refused, this, [this](const Refusal& refusal) {
    banner_->setText(refusalText(refusal));
    banner_->show();
  });
  showOverview();
}

void TodayRoom::showEvent(QShowEvent* event) {
  Room::showEvent(event);
  if (old_ || (overview_ && overview_->day != today_())) read();
}

void TodayRoom::read() {
  if (!collection_.file()) return;
  old_ = false;
  collection_.ask(store::inOneReading([day = today_()](store::Collection& collection) {
                    return transfer::readDayOverview(collection, day);
                  }),
                  [this](transfer::DayOverview overview) {
                    overview_ = std::move(overview);
                    showOverview();
                  });
}

void TodayRoom::showOverview() {
  heading_->setText(overview_ ? dayHeading(overview_->day)
                              : (collection_.file() ? tr("Reading…") : tr("No collection is open.")));
  writeDown_->setEnabled(overview_.has_value() && !collection_.isReadOnly());
  rows_.clear();
  while (QLayoutItem* old = cards_->takeAt(0)) {
    if (old->widget() != nullptr) old->widget()->deleteLater();
    delete old;
  }
  if (overview_)
    for (const TodayCard& card : todayCards(*overview_)) addCard(card);
  cards_->addStretch(1);
  if (!rows_.empty()) setFocusProxy(rows_.front());
  emit stateChanged();
}

void TodayRoom::addCard(const TodayCard& card) {
  auto* frame = new QFrame;
  QVBoxLayout* layout = layOutCard(*frame, card.heading);
  for (const TodayRow& row : card.rows) {
    auto* button = new RowButton(row.text);
    QFont font = button->font();
    font.setPointSize(kRowPoints);
    button->setFont(font);
    button->setAccessibleName(QStringLiteral("%1: %2, %3").arg(card.heading, row.text, wordOf(row.mark)));
    button->setEnabled(row.place != TodayPlace::Nowhere);
    connect(button, &QPushButton::clicked, this, [this, row] { follow(row); });
    auto* mark = new MarkWidget(row.mark);
    mark->setFont(font);
    auto* line = new QHBoxLayout;
    line->addWidget(mark);
    line->addWidget(button, 1);
    layout->addLayout(line);
    rows_.push_back(button);
  }
  cards_->addWidget(frame);
}

void TodayRoom::follow(const TodayRow& row) {
  const int today = intake::dayNumber(overview_->day);
  switch (row.place) {
    case TodayPlace::Kitchen:
      return emit kitchenWanted(row.section, today);
    case TodayPlace::Leftovers:
      return emit leftoversWanted(row.section, today - 1);
    case TodayPlace::Pans:
      return emit pansWanted(row.section,
                             intake::dayNumber(overview_->pansThatStand.at(row.index).record.day));
    case TodayPlace::Swap: {
      const auto& key = overview_->swapsMade.at(row.index).record.instead.bowl;
      const auto section = overview_->groups.find(key.group);
      const bool isKnown = section != overview_->groups.end();
      return emit kitchenWanted(isKnown ? QString::fromStdString(section->second.section) : QString(),
                                intake::dayNumber(key.day));
    }
    case TodayPlace::SwapDecision:
      return decide(overview_->swapsWaiting.at(row.index));
    case TodayPlace::Nowhere:
      return;
    case TodayPlace::Diet:
      return emit dietWanted(QString::fromStdString(overview_->dietsWaiting.at(row.index).name));
  }
}

void TodayRoom::decide(const store::StoredSwap& swap) {
  reason_->ask(tr("Refuse this swap: why?"), {}, tr("Refuse"),
               [this, swap](const ReasonBar::Answer& answer) { decideOn(swap, false, answer.reason); });
  reason_->offer(tr("Approve it"), [this, swap] { decideOn(swap, true, {}); });
}

void TodayRoom::decideOn(const store::StoredSwap& swap, bool approved, const QString& reason) {
  collection_.ask(
      [swap, approved, reason = reason.toStdString(),
       author = collection_.author()](store::Collection& collection) {
        return store::decideSwap(collection, swap.id, swap.revision, approved, reason, author);
      },
      [this](const store::Written& /*written*/) { emit collection_.written(this); });
}

RoomState TodayRoom::state() const {
  RoomState state = stateOf(collection_);
  state.units = tr("g as fed, of the whole bowl");
  return state;
}

std::vector<FinderHit> TodayRoom::find(const QString& partOfName, int most) const {
  std::vector<FinderHit> hits;
  if (partOfName.trimmed().isEmpty() || !overview_) return hits;
  for (std::size_t i = 0; i < overview_->sections.size() && hits.size() < static_cast<std::size_t>(most);
       ++i) {
    const QString name = QString::fromStdString(overview_->sections[i].section);
    if (name.contains(partOfName.trimmed(), Qt::CaseInsensitive))
      hits.push_back({name, tr("section"), static_cast<qint64>(i)});
  }
  return hits;
}

void TodayRoom::goTo(qint64 id) {
  if (overview_ && id >= 0 && static_cast<std::size_t>(id) < overview_->sections.size())
    emit kitchenWanted(QString::fromStdString(overview_->sections[static_cast<std::size_t>(id)].section),
                       intake::dayNumber(overview_->day));
}

}  // namespace tarebowl::ui
