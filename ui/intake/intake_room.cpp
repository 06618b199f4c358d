// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/intake_room.h"

#include "ui/collection/collection_state.h"
#include "ui/collection/conflict_text.h"
#include "ui/intake/chart_picture.h"
#include "ui/intake/choice_chart.h"
#include "ui/intake/food_bands_chart.h"
#include "ui/intake/group_choice.h"
#include "ui/intake/intake_page.h"
#include "ui/intake/intake_side.h"
#include "ui/intake/intake_table.h"
#include "ui/intake/intake_text.h"
#include "ui/intake/study_file.h"
#include "ui/intake/study_page.h"
#include "ui/intake/subject_box.h"
#include "ui/intake/value_chart.h"
#include "ui/intake/yesterday_page.h"
#include "ui/shared/banner.h"
#include "ui/shared/card.h"
#include "ui/shared/folding_panes.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/segmented_switch.h"
#include "ui/shared/stacked_panes.h"
#include "ui/shared/wrapping_row.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include <array>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kListWidth = 216;
constexpr int kSideWidth = 270;
constexpr int kChartsWidth = 780;
constexpr std::array kRanges{7, 60, 365, 0};  // days; 0: all

/// name: what a screen reader says of them; what: what F1 says.
void nameTabs(QTabWidget& tabs, const QString& name, const QString& what) {
  tabs.setDocumentMode(true);
  tabs.setAccessibleName(name);
  tabs.tabBar()->setAccessibleName(name);
  tabs.setWhatsThis(what);
}

QLabel* softLine() {
  auto* line = new QLabel;
  line->setProperty("soft", true);
  line->setTextFormat(Qt::PlainText);
  line->setWordWrap(true);
  return line;
}

QWidget* under(QWidget* title, QWidget* chart) {
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 6, 0, 0);
  layout->setSpacing(2);
  layout->addWidget(title);
  layout->addWidget(chart, 1);
  return page;
}

}  // namespace

IntakeRoom::IntakeRoom(OpenCollection& collection, Dialogs dialogs, IntakeDesk::Clock today, QWidget* parent)
    : Room(parent),
      collection_(collection),
      dialogs_(std::move(dialogs)),
      desk_(new IntakeDesk(collection, today, this)),
      pages_(new QTabWidget),
      groups_(new GroupChoice(*desk_)),
      range_(new SegmentedSwitch(tr("How far back"), {tr("Week"), tr("60 days"), tr("Year"), tr("All")})),
      shows_(new SegmentedSwitch(tr("Offered or eaten"), {tr("Offered"), tr("Both"), tr("Eaten")})),
      subject_(new SubjectBox(*desk_)),
      foods_(new FoodBandsChart),
      below_(new QTabWidget),
      value_(new ValueChart(tr("What is followed, as eaten against its zone"))),
      ratio_(new ValueChart(tr("Calcium to phosphorus, offered against eaten"))),
      choice_(new ChoiceChart),
      bowl_(new QComboBox),
      table_(new PlainTable(tr("Foods, offered and eaten"))),
      rows_(new RowsModel(foodTitles(), {1, 2, 3, 4, 5, 6}, this)),
      side_(new IntakeSide),
      study_(new StudyPage(*desk_, collection, today)),
      yesterday_(new YesterdayPage(collection, std::move(today))),
      heading_(new QLabel),
      invented_(new QLabel(tr("Invented sample"))),
      inSight_(softLine()),
      valueTitle_(softLine()),
      ratioTitle_(softLine()),
      banner_(makeBanner()) {
  build();
  wire();
  showGroup();
}

void IntakeRoom::build() {
  pages_->addTab(makeOverTime(), tr("Over time"));
  pages_->addTab(yesterday_, tr("Yesterday's bowls"));
  pages_->addTab(study_, tr("Study"));
  nameTabs(*pages_, tr("Over time, yesterday's bowls, or a study"),
           tr("What was really eaten. Amounts come from the weights that the kitchen wrote down, nutrients "
              "from the foods' composition; what was not weighed stays unknown."));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 4, 12, 10);
  layout->addWidget(pages_);
  setFocusProxy(groups_);
}

QWidget* IntakeRoom::makeOverTime() {
  auto* page = new QWidget;
  groups_->setFixedWidth(kListWidth);
  side_->setMinimumWidth(kSideWidth);
  auto* middle = new QVBoxLayout;
  middle->setContentsMargins(0, 8, 0, 0);
  middle->addWidget(makeHead());
  middle->addWidget(banner_);
  auto* below = new FoldingPanes;
  below->setHandleWidth(12);
  below->addWidget(makeCharts());
  below->addWidget(side_);
  below->setStretchFactor(0, 1);
  below->setStretchFactor(1, 0);
  below->setWidths({kChartsWidth, kSideWidth});
  middle->addWidget(below, 1);
  auto* layout = new QHBoxLayout(page);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(12);
  layout->addWidget(groups_);
  layout->addLayout(middle, 1);
  return page;
}

QWidget* IntakeRoom::makeHead() {
  auto* head = new QWidget;
  QFont large = heading_->font();
  large.setPointSizeF(large.pointSizeF() * 1.3);
  large.setBold(true);
  heading_->setFont(large);
  range_->setWhatsThis(tr("How many days are in sight, up to the last one with a bowl."));
  shows_->setWhatsThis(
      tr("Offered is what the kitchen weighed in; eaten is that less what was left and lost, corrected by "
         "control pans."));
  range_->setCurrent(1);
  shows_->setCurrent(1);
  auto* first = new WrappingRow;
  first->addWidget(heading_);
  inSight_->setWordWrap(false);
  inSight_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  first->addWidget(inSight_);
  first->addWidget(invented_);
  auto* copyButton = new QPushButton(tr("Copy"));
  copyButton->setToolTip(tr("The numbers that are shown, for a spreadsheet"));
  connect(copyButton, &QPushButton::clicked, this, &IntakeRoom::copy);
  first->addWidget(copyButton);
  for (const char* ending : {"png", "pdf", "csv"}) {
    auto* button = new QPushButton(QString::fromLatin1(ending).toUpper() + QStringLiteral("…"));
    button->setObjectName(QString::fromLatin1(ending));
    button->setToolTip(tr("The days in sight as a file"));
    connect(button, &QPushButton::clicked, this, [this, ending] { write(ending); });
    first->addWidget(button);
  }
  auto* study = new QPushButton(tr("Study…"));
  study->setObjectName(QStringLiteral("study"));
  study->setToolTip(tr("The days in sight as the report of an intake study: PDF, XLSX or HTML"));
  connect(study, &QPushButton::clicked, this, [this] { writeStudyOf(desk_->span()); });
  first->addWidget(study);
  auto* second = new WrappingRow;
  subject_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  for (QWidget* part : std::initializer_list<QWidget*>{range_, shows_, subject_}) second->addWidget(part);
  auto* layout = new QVBoxLayout(head);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addLayout(first);
  layout->addLayout(second);
  return head;
}

QWidget* IntakeRoom::makeCharts() {
  auto* foods = new QFrame;
  layOutCard(*foods,
             tr("Grams a day of each food, all animals together: full what was eaten, hatched what was left"))
      ->addWidget(foods_, 1);
  table_->setModel(rows_);
  table_->setWideColumn(0);
  bowl_->setAccessibleName(tr("Bowl"));
  below_->addTab(under(valueTitle_, value_), tr("Against its zone"));
  below_->addTab(under(ratioTitle_, ratio_), tr("Ca : P"));
  below_->addTab(under(bowl_, choice_), tr("Picked first"));
  below_->addTab(table_, tr("Foods"));
  nameTabs(*below_, tr("What is shown below"),
           tr("The same days once more: what is followed against its zone, Ca:P, what is picked first, and "
              "the foods in numbers."));
  auto* halves = new StackedPanes;
  halves->addWidget(foods);
  auto* card = new QFrame;
  card->setProperty("card", true);
  auto* layout = new QVBoxLayout(card);
  layout->setContentsMargins(10, 4, 10, 6);
  layout->addWidget(below_);
  halves->addWidget(card);
  halves->setSizes({300, 300});
  return halves;
}

void IntakeRoom::wire(TimeChart& chart) {
  connect(&chart, &TimeChart::spanSought, desk_, &IntakeDesk::look);
  connect(&chart, &TimeChart::allSought, desk_, [this] { desk_->showLast(0); });
}

void IntakeRoom::wire() {
  for (TimeChart* chart : std::initializer_list<TimeChart*>{foods_, value_, ratio_, choice_}) wire(*chart);
  connect(desk_, &IntakeDesk::groupsChanged, this, &IntakeRoom::showGroup);
  connect(desk_, &IntakeDesk::spanChanged, this, &IntakeRoom::showSpan);
  connect(desk_, &IntakeDesk::trendChanged, this, &IntakeRoom::showTrend);
  connect(range_, &SegmentedSwitch::chosen, desk_,
          [this](int range) { desk_->showLast(kRanges.at(static_cast<std::size_t>(range))); });
  connect(shows_, &SegmentedSwitch::chosen, foods_,
          [this](int shows) { foods_->setShows(static_cast<FoodBandsChart::Shows>(shows)); });
  connect(bowl_, &QComboBox::activated, this, &IntakeRoom::showChoice);
  connect(pages_, &QTabWidget::currentChanged, this, [this](int page) {
    if (page > 0) pages_->widget(page)->setFocus();
    emit stateChanged();
  });
  connect(study_, &StudyPage::planToWrite, this, &IntakeRoom::writePlan);
  connect(study_, &StudyPage::reportWanted, this, &IntakeRoom::writeStudyOf);
  connect(&collection_, &OpenCollection::busyChanged, this, &Room::stateChanged);
  connect(&collection_, &OpenCollection::opened, banner_, &QWidget::hide);
  const auto tell = [this](const Refusal& refusal) {
    if (isVisible()) complain(refusalText(refusal));
  };
  connect(&collection_, &OpenCollection::refused, this, tell);
  connect(&collection_, &OpenCollection::hindered, this, tell);
}

void IntakeRoom::showGroup() {
  const IntakeGroup* group = desk_->group();
  heading_->setText(group != nullptr     ? group->name
                    : collection_.file() ? tr("No group has a bowl yet")
                                         : tr("No collection is open"));
  if (group != nullptr) yesterday_->showSection(group->section);
  emit stateChanged();
}

void IntakeRoom::showSpan() {
  const DaySpan& span = desk_->span();
  inSight_->setText(spanText(span));
  for (TimeChart* chart : std::initializer_list<TimeChart*>{foods_, value_, ratio_, choice_})
    chart->setSpan(span);
  int known = -1;
  for (std::size_t i = 0; i < kRanges.size(); ++i)
    if (desk_->group() != nullptr && desk_->group()->fed) {
      const DaySpan& fed = *desk_->group()->fed;
      const bool all = kRanges[i] == 0 && span == fed;
      if (known < 0 && (all || (span.until == fed.until && span.days() == kRanges[i])))
        known = static_cast<int>(i);
    }
  range_->setCurrent(known);
}

void IntakeRoom::showTrend() {
  const auto& trend = desk_->trend();
  invented_->setVisible(trend && trend->invented);
  for (QPushButton* button : findChildren<QPushButton*>())
    if (!button->objectName().isEmpty()) button->setEnabled(trend.has_value());
  foods_->show(trend ? foodBandsOf(*trend) : FoodBands{});
  for (const auto& [chart, title, line] : {std::tuple{value_, valueTitle_, transfer::kSubjectLine},
                                           {ratio_, ratioTitle_, transfer::kCalciumLine}}) {
    const ValueLine shown = trend ? valueLineOf(*trend, line) : ValueLine{};
    chart->show(shown);
    const QString unit = shown.unit.isEmpty() ? QString() : tr(", %1").arg(shown.unit);
    title->setText(trend ? tr("%1%2: mean day per animal; shaded its zone, hatched what is missing, ▼ a drop")
                               .arg(shown.name, unit)
                         : QString());
  }
  const QString label = bowl_->currentData().toString();
  bowl_->clear();
  if (trend)
    for (const std::string& one : choiceLabels(*trend))
      bowl_->addItem(tr("%1: Manly's alpha with its 95 % interval; dashed: nothing is preferred")
                         .arg(QString::fromStdString(one)),
                     QString::fromStdString(one));
  bowl_->setCurrentIndex(bowl_->count() == 0 ? -1 : std::max(0, bowl_->findData(label)));
  showChoice();
  showWords();
}

void IntakeRoom::showChoice() {
  const auto& trend = desk_->trend();
  const std::string label = bowl_->currentData().toString().toStdString();
  bowl_->setVisible(bowl_->count() > 0);
  choice_->show(trend ? choiceLinesOf(*trend, label) : ChoiceLines{});
}

void IntakeRoom::showWords() {
  const auto& trend = desk_->trend();
  rows_->show(trend ? foodRows(*trend, desk_->span()) : std::vector<RowsModel::Row>());
  side_->show(trend ? &*trend : nullptr, desk_->span());
  emit stateChanged();
}

void IntakeRoom::copy() {
  if (desk_->trend()) QApplication::clipboard()->setText(intakeTableToCopy(*desk_->trend(), desk_->span()));
}

void IntakeRoom::write(const char* ending) {
  if (!desk_->trend() || !dialogs_.sheetToSave) return;
  const auto file =
      dialogs_.sheetToSave(this, "intake-" + desk_->trend()->group.group.record.code + "." + ending);
  if (!file) return;
  IntakePage page{.trend = *desk_->trend(), .span = desk_->span()};
  page.charts.push_back(pictureOf(tr("Grams a day of each food"), *foods_, foods_->size()));
  if (below_->currentIndex() != 1)
    page.charts.push_back(pictureOf(valueTitle_->text(), *value_, foods_->size()));
  page.charts.push_back(pictureOf(ratioTitle_->text(), *ratio_, foods_->size()));
  if (bowl_->count() > 0) page.charts.push_back(pictureOf(bowl_->currentText(), *choice_, foods_->size()));
  if (const auto why = writeIntake(page, *file)) complain(*why);
}

void IntakeRoom::writeStudyOf(const DaySpan& days) {
  constexpr int kLongestStudy = 366;
  if (desk_->group() == nullptr || !dialogs_.sheetToSave) return;
  if (days.days() > kLongestStudy)
    return complain(tr("A study holds each of its bowls: look at a year or less, and try again."));
  const auto file = dialogs_.sheetToSave(this, "study-" + desk_->group()->code + ".pdf");
  if (!file) return;
  desk_->study(days, [this, file = *file](const exchange::IntakeToWrite& study) {
    if (const auto why = writeStudy(study, file)) complain(*why);
  });
}

void IntakeRoom::writePlan(const exchange::StudyPlanToWrite& plan) {
  if (!dialogs_.sheetToSave) return;
  const auto file = dialogs_.sheetToSave(this, "study-plan-" + plan.group + ".pdf");
  if (!file) return;
  if (const auto why = writeStudyPlan(plan, *file)) complain(*why);
}

void IntakeRoom::complain(const QString& text) {
  banner_->setText(text);
  banner_->show();
}

RoomState IntakeRoom::state() const {
  RoomState state = stateOf(collection_);
  state.units = tr("grams as fed a day · nutrients per animal, as offered and as eaten");
  return state;
}

std::vector<FinderHit> IntakeRoom::find(const QString& partOfName, int most) const {
  std::vector<FinderHit> hits;
  const QString part = partOfName.trimmed();
  if (part.isEmpty()) return hits;
  for (std::size_t i = 0; i < desk_->groups().size() && static_cast<int>(hits.size()) < most; ++i) {
    const IntakeGroup& group = desk_->groups()[i];
    if (group.name.contains(part, Qt::CaseInsensitive))
      hits.push_back({group.name, tr("intake"), static_cast<qint64>(i)});
  }
  return hits;
}

void IntakeRoom::goTo(qint64 id) {
  const auto place = static_cast<std::size_t>(id);
  if (place < desk_->groups().size()) desk_->show(desk_->groups()[place].code);
}

void IntakeRoom::showEvent(QShowEvent* event) {
  desk_->setInSight(true);
  Room::showEvent(event);
}

void IntakeRoom::hideEvent(QHideEvent* event) {
  desk_->setInSight(false);
  Room::hideEvent(event);
}

}  // namespace tarebowl::ui
