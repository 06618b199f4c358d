// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/health/health_room.h"

#include "core/health/attachment_path.h"
#include "ui/collection/collection_state.h"
#include "ui/collection/conflict_text.h"
#include "ui/health/health_page_file.h"
#include "ui/health/health_text.h"
#include "ui/health/health_timeline.h"
#include "ui/health/observation_form.h"
#include "ui/shared/banner.h"
#include "ui/shared/card.h"
#include "ui/shared/days.h"
#include "ui/shared/folding_panes.h"
#include "ui/shared/number_field.h"
#include "ui/shared/paths.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/room_actions.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kLookBackTab = 1;

/// The field inside a spin box is a control of its own to a screen reader.
void nameSpin(QAbstractSpinBox& spin, const QString& name) {
  spin.setAccessibleName(name);
  spin.findChild<QLineEdit*>()->setAccessibleName(name);
}

QLabel* makeWords() {
  auto* words = new QLabel;
  words->setWordWrap(true);
  words->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return words;
}

QWidget* scrolled(QWidget* content, const QString& name) {
  auto* area = new QScrollArea;
  area->setAccessibleName(name);
  area->setWidget(content);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  return area;
}

}  // namespace

HealthRoom::HealthRoom(OpenCollection& collection, Dialogs dialogs, HealthDesk::Clock today, QWidget* parent)
    : Room(parent),
      collection_(collection),
      dialogs_(std::move(dialogs)),
      desk_(new HealthDesk(collection, std::move(today), this)),
      patients_(new QListWidget),
      form_(new ObservationForm),
      seen_(new PlainTable(tr("What was seen"))),
      seenRows_(new RowsModel({tr("Kind"), tr("Day"), tr("What"), tr("Of")}, {}, this)),
      timeline_(new HealthTimeline),
      zones_(new PlainTable(tr("Calcium against its targets"))),
      zoneRows_(new RowsModel({tr("As eaten"), tr("Target"), tr("Zone"), tr("Offered"), tr("Eaten"),
                               tr("With the dose"), tr("Unit")},
                              {2, 3, 4, 5}, this)),
      links_(new PlainTable(tr("Foods and the sign"))),
      linkRows_(new RowsModel({tr("Food"), tr("Sign, with it"), tr("without"), tr("Fisher"), tr("corrected"),
                               tr("Risk ratio (95 %)")},
                              {1, 2, 3, 4, 5}, this)),
      tabs_(new QTabWidget),
      days_(new QComboBox),
      supplement_(new QComboBox),
      retained_(new NumberField),
      hours_(new QSpinBox),
      page_(new QPushButton(tr("Review for the file…"))),
      heading_(new QLabel),
      invented_(new QLabel(tr("Invented sample"))),
      upTo_(makeWords()),
      review_(makeWords()),
      lookBack_(makeWords()),
      banner_(makeBanner()) {
  seen_->setModel(seenRows_);
  seen_->setWideColumn(2);
  zones_->setModel(zoneRows_);
  zones_->setWideColumn(1);
  links_->setModel(linkRows_);
  links_->setWideColumn(0);
  build();
  explainParts();
  wire();
  showPatients();
  showView();
  showLookBack();
}

void HealthRoom::build() {
  tabs_->addTab(makeReview(), tr("Calcium review"));
  tabs_->addTab(makeLookBack(), tr("Look-back"));
  tabs_->setDocumentMode(true);
  tabs_->setAccessibleName(tr("Review or look-back"));
  tabs_->tabBar()->setAccessibleName(tr("Review or look-back"));
  auto* right = new QWidget;
  auto* layout = new QVBoxLayout(right);
  layout->setContentsMargins(16, 10, 16, 10);
  layout->addWidget(makeHead());
  layout->addWidget(banner_);
  layout->addWidget(upTo_);
  auto* halves = new QSplitter(Qt::Vertical);
  halves->setChildrenCollapsible(false);
  halves->addWidget(timeline_);
  halves->addWidget(tabs_);
  halves->setSizes({300, 360});
  layout->addWidget(halves, 1);
  connect(desk_, &HealthDesk::lookBackChanged, tabs_, [this] {
    if (desk_->lookBack()) tabs_->setCurrentIndex(kLookBackTab);
  });
  connect(tabs_, &QTabWidget::currentChanged, this, &HealthRoom::showPageButton);
  auto* panes = new FoldingPanes;
  auto* left = makeLeft();
  left->setMinimumWidth(380);
  panes->addWidget(left);
  panes->addWidget(right);
  panes->setStretchFactor(0, 1);
  panes->setStretchFactor(1, 3);
  panes->setSizes({420, 870});
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(panes);
  setFocusProxy(patients_);
}

/// What F1 says of them.
void HealthRoom::explainParts() {
  patients_->setWhatsThis(
      tr("Groups, and under each its animals. Choose one: its signs, masses and bowls are set on one axis of "
         "days, and calcium is reviewed for it."));
  seen_->setWhatsThis(
      tr("What was written down of it, the newest first; ▲ is a sign, from which Enter looks back to the "
         "bowls before it. Each line keeps who wrote it."));
  days_->setWhatsThis(tr(
      "How many days are shown and reviewed: those up to today, or, where nothing was written down for more "
      "than a week, those up to the last record."));
  page_->setWhatsThis(
      tr("Writes what the tab in sight says as one page, to print or to keep: PDF, HTML or JSON."));
  tabs_->setWhatsThis(tr("The calcium review, or the look-back from a sign."));
  tabs_->widget(0)->setWhatsThis(
      tr("What was eaten day by day: the kitchen's weights, less what came back, times the composition of "
         "the foods; a mean day is set against the targets of the group. A value that nobody knows stays "
         "unknown and widens the range. The least dose is worked out from the supplement's own composition, "
         "and is held below the safe limit of the targets. Whether it is given, the vet decides."));
  tabs_->widget(kLookBackTab)
      ->setWhatsThis(tr("Bowls in the hours before the sign against the same hours before days without it: "
                        "how often the sign came with a food and without it, Fisher's exact test, the same "
                        "corrected for the number of foods that were looked at, and the risk ratio with its "
                        "95 % interval. It shows what goes together, not what caused what."));
}

QWidget* HealthRoom::makeLeft() {
  auto* left = new QWidget;
  patients_->setAccessibleName(tr("Groups and animals"));
  auto* entry = new QFrame;
  layOutCard(*entry, tr("Write down what was seen"))->addWidget(form_);
  auto* layout = new QVBoxLayout(left);
  layout->setContentsMargins(12, 10, 12, 10);
  layout->addWidget(patients_, 2);
  layout->addWidget(entry);
  layout->addWidget(seen_, 3);
  return left;
}

QWidget* HealthRoom::makeHead() {
  auto* head = new QWidget;
  days_->setAccessibleName(tr("How far back"));
  for (const int days : {14, 28, 60, 120, 365}) days_->addItem(tr("%1 days").arg(days), days);
  days_->setCurrentIndex(1);
  QFont large = heading_->font();
  large.setPointSizeF(large.pointSizeF() * 1.3);
  large.setBold(true);
  heading_->setFont(large);
  auto* layout = new QHBoxLayout(head);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(heading_, 1);
  layout->addWidget(invented_);
  layout->addWidget(days_);
  layout->addWidget(page_);
  return head;
}

QWidget* HealthRoom::makeReview() {
  auto* content = new QWidget;
  supplement_->setAccessibleName(tr("Supplement"));
  nameSpin(*retained_, tr("Share of a dust that reaches the mouth"));
  retained_->setRange(1.0, 100.0);
  retained_->setDecimals(0);
  retained_->setSuffix(tr(" %"));
  retained_->setValue(100.0);
  auto* asks = new QHBoxLayout;
  asks->addWidget(new QLabel(tr("Least addition of")));
  asks->addWidget(supplement_);
  asks->addWidget(new QLabel(tr("of which reaches the mouth")));
  asks->addWidget(retained_);
  asks->addStretch(1);
  auto* layout = new QVBoxLayout(content);
  layout->setContentsMargins(0, 8, 0, 0);
  layout->addLayout(asks);
  layout->addWidget(review_);
  layout->addWidget(zones_, 1);
  zones_->setMinimumHeight(200);
  return scrolled(content, tr("Calcium review"));
}

QWidget* HealthRoom::makeLookBack() {
  auto* content = new QWidget;
  nameSpin(*hours_, tr("Hours before the sign"));
  hours_->setRange(health::kShortestWindow, health::kLongestWindow);
  hours_->setSingleStep(6);
  hours_->setValue(health::LookBackRule().hours);
  hours_->setSuffix(tr(" h before"));
  auto* asks = new QHBoxLayout;
  asks->addWidget(new QLabel(tr("Bowls given in the")));
  asks->addWidget(hours_);
  asks->addStretch(1);
  auto* layout = new QVBoxLayout(content);
  layout->setContentsMargins(0, 8, 0, 0);
  layout->addLayout(asks);
  layout->addWidget(lookBack_);
  layout->addWidget(links_, 1);
  links_->setMinimumHeight(200);
  return scrolled(content, tr("Look-back"));
}

void HealthRoom::wire() {
  connect(desk_, &HealthDesk::patientsChanged, this, &HealthRoom::showPatients);
  connect(desk_, &HealthDesk::viewChanged, this, &HealthRoom::showView);
  connect(desk_, &HealthDesk::lookBackChanged, this, &HealthRoom::showLookBack);
  connect(desk_, &HealthDesk::questioned, form_, &ObservationForm::question);
  connect(desk_, &HealthDesk::kept, form_, &ObservationForm::clear);
  connect(desk_, &HealthDesk::kept, banner_, &QLabel::hide);
  connect(patients_, &QListWidget::currentRowChanged, desk_, &HealthDesk::show);
  connect(form_, &ObservationForm::keepWanted, this, &HealthRoom::keep);
  connect(form_, &ObservationForm::fileWanted, this, &HealthRoom::chooseFile);
  connect(seen_, &QAbstractItemView::activated, this,
          [this](const QModelIndex& index) { lookBackFromRow(index.row()); });
  connect(seen_, &QAbstractItemView::clicked, this,
          [this](const QModelIndex& index) { lookBackFromRow(index.row()); });
  connect(days_, &QComboBox::activated, this, [this] { desk_->setDays(days_->currentData().toInt()); });
  connect(supplement_, &QComboBox::activated, this, &HealthRoom::askAgain);
  connect(retained_, &QDoubleSpinBox::valueChanged, this, &HealthRoom::askAgain);
  connect(hours_, &QSpinBox::valueChanged, this, [this](int hours) {
    if (const auto& page = desk_->lookBack()) desk_->lookBackFrom(page->kind, page->lookBack.sign.day, hours);
  });
  connect(page_, &QPushButton::clicked, this, &HealthRoom::writePage);
  connect(&collection_, &OpenCollection::busyChanged, this, &Room::stateChanged);
  connect(&collection_, &OpenCollection::refused, this,
          [this](const Refusal& refusal) { complain(refusalText(refusal)); });
  connect(&collection_, &OpenCollection::hindered, this, [this](const Refusal& refusal) {
    if (isVisible()) complain(refusalText(refusal));
  });
  auto* actions = new RoomActions(*this);
  (void)actions->addUndoRedo(desk_->undoStack());
}

void HealthRoom::showPatients() {
  const QSignalBlocker quiet(patients_);
  patients_->clear();
  for (const HealthPatient& patient : desk_->patients()) patients_->addItem(patient.name);
  if (desk_->shown()) patients_->setCurrentRow(*desk_->shown());
  supplement_->clear();
  supplement_->addItem(tr("no supplement"), QString());
  for (const auto& [code, name] : desk_->supplements())
    supplement_->addItem(name, QString::fromStdString(code));
  form_->setToday(desk_->today());
}

void HealthRoom::showView() {
  const auto& view = desk_->view();
  for (QWidget* part : std::initializer_list<QWidget*>{form_, invented_, timeline_})
    part->setEnabled(view.has_value());
  invented_->setVisible(view && view->page.subject.invented);
  const bool isOver = view && view->period.to != desk_->today();
  upTo_->setVisible(isOver);
  if (isOver)
    upTo_->setText(
        tr("The last record is of %1: the days up to then are shown.").arg(dateText(view->period.to)));
  heading_->setText(view                 ? QString::fromStdString(view->period.name)
                    : collection_.file() ? tr("Nobody is shown")
                                         : tr("No collection is open"));
  review_->setText(view ? reviewText(*view) : QString());
  seenRows_->show(view ? observationRows(*view) : std::vector<RowsModel::Row>());
  zoneRows_->show(view ? zoneRows(*view) : std::vector<RowsModel::Row>());
  if (view) timeline_->show(*view);
  showPageButton();
  if (desk_->shown() && patients_->currentRow() != *desk_->shown()) {
    const QSignalBlocker quiet(patients_);
    patients_->setCurrentRow(*desk_->shown());
  }
  emit stateChanged();
}

void HealthRoom::showLookBack() {
  const auto& page = desk_->lookBack();
  lookBack_->setText(
      page ? lookBackText(*page)
           : tr("Choose a sign (▲) at the left: what was eaten before it is compared with days without it."));
  linkRows_->show(page ? linkRows(*page) : std::vector<RowsModel::Row>());
  showPageButton();
}

/// The page is of the tab in sight.
void HealthRoom::showPageButton() {
  const bool isLookBack = tabs_->currentIndex() == kLookBackTab;
  page_->setText(isLookBack ? tr("Look-back for the file…") : tr("Review for the file…"));
  page_->setEnabled(isLookBack ? desk_->lookBack().has_value() : desk_->view().has_value());
}

void HealthRoom::writeDown() {
  form_->setFocus();
}

void HealthRoom::chooseFile() {
  if (!collection_.file() || !dialogs_.attachmentToOpen) return;
  const std::filesystem::path folder = collection_.file()->file.parent_path();
  const auto file = dialogs_.attachmentToOpen(this, folder);
  if (!file) return;
  if (const auto path = health::attachmentPath(folder, *file))
    return form_->takeFile(QString::fromStdString(*path));
  form_->complain(
      tr("“%1” cannot be named beside the collection: put it into %2, under a name without : and \\, "
         "and choose it there.")
          .arg(toText(file->filename()), toText(folder)));
}

void HealthRoom::lookBackFromRow(int row) {
  if (!desk_->view()) return;
  const auto& seen = desk_->view()->period.observations;
  const std::size_t place = seen.size() - 1 - static_cast<std::size_t>(row);
  if (place >= seen.size()) return;
  const health::Observation& record = seen[place].record;
  if (health::isSign(record)) desk_->lookBackFrom(record.kind, record.on, hours_->value());
}

void HealthRoom::askAgain() {
  desk_->ask({supplement_->currentData().toString().toStdString(), retained_->value() / 100.0, 1.0});
}

void HealthRoom::keep(bool confirmed) {
  auto seen = form_->observation();
  if (!seen || !desk_->shown()) return;
  const transfer::HealthSubject& subject =
      desk_->patients()[static_cast<std::size_t>(*desk_->shown())].subject;
  if (subject.individual.empty())
    seen->group = subject.group;
  else
    seen->individual = subject.individual;
  desk_->add(std::move(*seen), confirmed ? store::Confirmed::Yes : store::Confirmed::No);
}

void HealthRoom::writePage() {
  if (!page_->isEnabled() || !dialogs_.sheetToSave) return;
  const bool isLookBack = tabs_->currentIndex() == kLookBackTab;
  const auto nameFor = [](const char* what, const exchange::HealthSubjectLine& subject) {
    return what + (subject.individual.empty() ? subject.group : subject.individual) + ".pdf";
  };
  const auto file = dialogs_.sheetToSave(this, isLookBack ? nameFor("look-back-", desk_->lookBack()->subject)
                                                          : nameFor("calcium-", desk_->view()->page.subject));
  if (!file) return;
  const auto why =
      isLookBack ? writeHealthPage(*desk_->lookBack(), *file) : writeHealthPage(desk_->view()->page, *file);
  if (why) complain(*why);
}

void HealthRoom::complain(const QString& text) {
  banner_->setText(text);
  banner_->show();
}

void HealthRoom::showEvent(QShowEvent* event) {
  Room::showEvent(event);
  desk_->setInSight(true);
}

void HealthRoom::hideEvent(QHideEvent* event) {
  Room::hideEvent(event);
  desk_->setInSight(false);
}

RoomState HealthRoom::state() const {
  RoomState state = stateOf(collection_);
  state.units = tr("mg and µg per animal and day · body mass in kg");
  return state;
}

std::vector<FinderHit> HealthRoom::find(const QString& partOfName, int most) const {
  std::vector<FinderHit> hits;
  if (partOfName.trimmed().isEmpty()) return hits;
  for (std::size_t i = 0; i < desk_->patients().size() && static_cast<int>(hits.size()) < most; ++i) {
    const HealthPatient& patient = desk_->patients()[i];
    if (patient.name.contains(partOfName.trimmed(), Qt::CaseInsensitive))
      hits.push_back({patient.name.trimmed(), tr("health"), static_cast<qint64>(i)});
  }
  return hits;
}

void HealthRoom::goTo(qint64 id) {
  patients_->setCurrentRow(static_cast<int>(id));
  patients_->setFocus();
}

}  // namespace tarebowl::ui
