// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_pane.h"

#include "core/exchange/problem_json.h"
#include "core/exchange/text_file.h"
#include "ui/diets/rotation_bar.h"
#include "ui/diets/rotation_calendar.h"
#include "ui/diets/rotation_export.h"
#include "ui/diets/rotation_form.h"
#include "ui/diets/rotation_hand_bar.h"
#include "ui/diets/rotation_side.h"
#include "ui/diets/rotation_text.h"
#include "ui/shared/banner.h"
#include "ui/shared/elided_label.h"
#include "ui/shared/folding_panes.h"
#include "ui/shared/paths.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/room_actions.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QTabBar>
#include <QTabWidget>
#include <QToolButton>
#include <QVBoxLayout>

namespace tarebowl::ui {

namespace {

QLabel* softLabel() {
  auto* label = new ElidedLabel;
  label->setProperty("soft", true);
  return label;
}

/// The first day that no rotation has yet.
quantity::Date nextFree(const std::vector<RotationPlanner::Listed>& list, quantity::Date today) {
  quantity::Date from = today;
  for (const RotationPlanner::Listed& each : list)
    if (each.until >= from) from = exchange::dateOfDay(each.until, 1);
  return from;
}

}  // namespace

RotationPane::RotationPane(RotationPlanner& planner, Dialogs dialogs, QWidget* parent)
    : QWidget(parent),
      planner_(planner),
      dialogs_(std::move(dialogs)),
      model_(new RotationCalendarModel(this)),
      calendar_(new RotationCalendar(*model_)),
      form_(new RotationForm),
      side_(new RotationSide),
      purchase_(
          new RowsModel({tr("week of"), tr("group"), tr("food"), tr("offered"), tr("to buy")}, {3, 4}, this)),
      title_(new ElidedLabel),
      made_(softLabel()),
      banner_(makeBanner()),
      nothing_(softLabel()),
      bar_(new RotationBar),
      sheet_(new QWidget) {
  build();
  wire();
  addActions();
  showList();
  showView();
  showPlanning();
}

void RotationPane::build() {
  auto* head = new QHBoxLayout;
  buildHead(*head);
  auto* card = new QFrame;
  constexpr int kCalendarHeight = 240;
  card->setProperty("card", true);
  card->setMinimumHeight(kCalendarHeight);
  auto* inCard = new QVBoxLayout(card);
  inCard->setContentsMargins(7, 5, 7, 7);
  inCard->addWidget(calendar_);
  auto* purchaseTable = new PlainTable(tr("Purchase list"));
  purchaseTable->setModel(purchase_);
  purchaseTable->setWideColumn(2);
  auto* lower = new QTabWidget;
  lower->setDocumentMode(true);
  lower->setAccessibleName(tr("Below the calendar"));
  lower->tabBar()->setAccessibleName(tr("What is shown below the calendar"));
  lower->addTab(purchaseTable, tr("To buy"));
  auto* sheetLayout = new QVBoxLayout(sheet_);
  sheetLayout->setContentsMargins(0, 0, 0, 0);
  sheetLayout->setSpacing(8);
  sheetLayout->addWidget(card, 3);
  sheetLayout->addWidget(new RotationHandBar(*calendar_));
  sheetLayout->addWidget(lower, 2);
  nothing_->setWordWrap(true);
  nothing_->setText(tr("No days are planned for this version: it is fed as it stands, the same each day."));
  form_->hide();
  auto* middle = new QWidget;
  auto* layout = new QVBoxLayout(middle);
  layout->setContentsMargins(13, 10, 13, 10);
  layout->setSpacing(9);
  layout->addLayout(head);
  layout->addWidget(bar_);
  layout->addWidget(banner_);
  layout->addWidget(form_);
  layout->addWidget(nothing_);
  layout->addWidget(sheet_, 1);
  layout->addStretch(0);
  auto* panes = new FoldingPanes;
  panes->addWidget(middle);
  panes->addWidget(side_);
  side_->setMinimumWidth(400);
  panes->setStretchFactor(0, 3);
  panes->setStretchFactor(1, 2);
  panes->setWidths({820, 470});
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(panes);
  setFocusProxy(calendar_);
}

void RotationPane::buildHead(QHBoxLayout& row) {
  QFont large = title_->font();
  large.setPointSizeF(large.pointSizeF() * 1.4);
  large.setBold(true);
  title_->setFont(large);
  title_->setAccessibleDescription(tr("Diet"));
  for (QLabel* label : {title_, made_}) label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  auto* words = new QVBoxLayout;
  words->setSpacing(1);
  words->addWidget(title_);
  words->addWidget(made_);
  row.addLayout(words, 1);
  row.setSpacing(6);
  row.setObjectName(QStringLiteral("head"));
}

void RotationPane::wire() {
  connect(bar_, &RotationBar::planWanted, this, &RotationPane::askForPlan);
  connect(bar_, &RotationBar::planAgainWanted, &planner_, &RotationPlanner::planAgain);
  connect(bar_, &RotationBar::stopWanted, &planner_, &RotationPlanner::stop);
  connect(bar_, &RotationBar::periodChosen, this,
          [this](int place) { planner_.show(planner_.list().at(static_cast<std::size_t>(place)).id); });
  connect(&planner_, &RotationPlanner::listChanged, this, &RotationPane::showList);
  connect(&planner_, &RotationPlanner::viewChanged, this, &RotationPane::showView);
  connect(&planner_, &RotationPlanner::planningChanged, this, &RotationPane::showPlanning);
  connect(&planner_, &RotationPlanner::told, this, &RotationPane::complain);
  connect(calendar_, &RotationCalendar::moveWanted, &planner_, [this](qint64 food, int from, int to) {
    hand_ = CalendarCell{static_cast<std::size_t>(food), to};
    banner_->hide();
    planner_.moveFood(static_cast<std::size_t>(food), from, to);
  });
  connect(
      calendar_, &RotationCalendar::gramsWanted, &planner_,
      [this](qint64 food, int day, double mass) {
        banner_->hide();
        planner_.setGrams(static_cast<std::size_t>(food), day, quantity::Grams(mass));
      },
      Qt::QueuedConnection);  // the editor is closed before the calendar is shown anew
  connect(calendar_, &RotationCalendar::lockWanted, &planner_,
          [this](qint64 food, int day) { planner_.turnLock(static_cast<std::size_t>(food), day); });
  connect(calendar_, &RotationCalendar::handMoved, this, [this] {
    if (calendar_->cell()) hand_ = calendar_->cell();
    side_->show(planner_.view(), calendar_->day());
  });
  connect(form_, &RotationForm::planWanted, this, [this] {
    form_->hide();
    planner_.plan(exchange::writeRotationRules(form_->rules()), form_->from());
  });
  connect(form_, &RotationForm::fileWanted, this, &RotationPane::planFromFile);
}

void RotationPane::addActions() {
  auto* actions = new RoomActions(*this);
  const RoomActions::UndoRedo edits = actions->addUndoRedo(planner_.undoStack());
  QAction* save = actions->add(tr("Save as a page or a file"), QKeySequence::Save, QStringLiteral("save"));
  QAction* print = actions->add(tr("Print the calendar"), QKeySequence::Print);
  QAction* remove = actions->add(tr("Remove this rotation"), {});
  QAction* back = actions->add(tr("Back to the diet"), QKeySequence(Qt::Key_Escape), QStringLiteral("close"));
  connect(save, &QAction::triggered, this, &RotationPane::write);
  connect(print, &QAction::triggered, this, &RotationPane::print);
  connect(remove, &QAction::triggered, &planner_, &RotationPlanner::remove);
  connect(back, &QAction::triggered, this, [this] {
    if (form_->isVisible() && planner_.view() != nullptr) return form_->hide();
    emit dismissed();
  });
  auto* row = findChild<QHBoxLayout*>(QStringLiteral("head"));
  for (QAction* action : {edits.undo, edits.redo, save, back}) row->addWidget(iconButtonFor(action));
}

void RotationPane::showList() {
  bar_->showList(planner_);
}

void RotationPane::showView() {
  const RotationView* view = planner_.view();
  const bool hasView = view != nullptr;
  title_->setText(diet_);
  made_->setText(hasView ? madeText(*view) : QString());
  sheet_->setVisible(hasView);
  side_->setVisible(hasView);
  bar_->showView(view);
  nothing_->setVisible(!hasView && !planner_.isPlanning());
  const auto hand = hand_;
  model_->show(view, planner_.today());
  purchase_->show(hasView ? purchaseRows(*view) : std::vector<RowsModel::Row>{});
  if (hand) calendar_->goTo(*hand);
  side_->show(view, calendar_->day());
  showList();
}

void RotationPane::showPlanning() {
  const bool planning = planner_.isPlanning();
  bar_->showPlanning(planning);
  if (planning) nothing_->hide();
}

void RotationPane::askForPlan() {
  banner_->hide();
  form_->ask(nextFree(planner_.list(), planner_.today()));
}

void RotationPane::planFromFile() {
  if (!dialogs_.fileToOpen) return;
  const auto file = dialogs_.fileToOpen(this, {});
  if (!file) return;
  try {
    const std::string rules = exchange::readText(*file);
    form_->hide();
    planner_.plan(rules, form_->from());
  } catch (const exchange::FormatError& error) {
    complain(QString::fromStdString(error.what()));
  }
}

void RotationPane::print() {
  const RotationView* view = planner_.view();
  if (view == nullptr) return;
  if (!dialogs_.printer) return write();
  if (dialogs_.printer(this, title_->text(),
                       [view](QPagedPaintDevice& device) { printRotation(*view, device); }))
    emit told(tr("printed: %1").arg(title_->text()));
}

void RotationPane::write() {
  const RotationView* view = planner_.view();
  if (view == nullptr || !dialogs_.sheetToSave) return;
  const std::string name = view->kept().diet + '-' + quantity::isoDate(view->kept().from) + ".pdf";
  const auto file = dialogs_.sheetToSave(this, toPath(QString::fromStdString(name)));
  if (!file) return;
  if (const auto why = writeRotation(*view, *file)) return complain(*why);
  emit told(tr("written: %1").arg(toText(*file)));
}

void RotationPane::complain(const QString& what) {
  banner_->setText(what);
  banner_->show();
}

}  // namespace tarebowl::ui
