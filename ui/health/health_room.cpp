// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/health/health_room.h"

#include "core/health/attachment_path.h"
#include "ui/collection/collection_state.h"
#include "ui/collection/conflict_text.h"
#include "ui/health/calcium_review.h"
#include "ui/health/health_page_file.h"
#include "ui/health/health_text.h"
#include "ui/health/health_timeline.h"
#include "ui/health/look_back_pane.h"
#include "ui/health/observation_form.h"
#include "ui/shared/banner.h"
#include "ui/shared/card.h"
#include "ui/shared/days.h"
#include "ui/shared/folding_panes.h"
#include "ui/shared/paths.h"
#include "ui/shared/plain_table.h"
#include "ui/shared/room_actions.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kLookBackTab = 1;

QLabel* makeWords() {
  auto* words = new QLabel;
  words->setWordWrap(true);
  words->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return words;
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
      review_(new CalciumReview(*desk_)),
      lookBack_(new LookBackPane(*desk_)),
      tabs_(new QTabWidget),
      days_(new QComboBox),
      page_(new QPushButton(tr("Review for the file…"))),
      heading_(new QLabel),
      invented_(new QLabel(tr("Invented sample"))),
      upTo_(makeWords()),
      banner_(makeBanner()) {
  seen_->setModel(seenRows_);
  seen_->setWideColumn(2);
  build();
  explainParts();
  wire();
  showPatients();
  showView();
}

void HealthRoom::build() {
  tabs_->addTab(review_, tr("Calcium review"));
  tabs_->addTab(lookBack_, tr("Look-back"));
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
  panes->setWidths({420, 870});
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

void HealthRoom::wire() {
  connect(desk_, &HealthDesk::patientsChanged, this, &HealthRoom::showPatients);
  connect(desk_, &HealthDesk::viewChanged, this, &HealthRoom::showView);
  connect(desk_, &HealthDesk::lookBackChanged, this, &HealthRoom::showPageButton);
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
  seenRows_->show(view ? observationRows(*view) : std::vector<RowsModel::Row>());
  if (view) timeline_->show(*view);
  showPageButton();
  if (desk_->shown() && patients_->currentRow() != *desk_->shown()) {
    const QSignalBlocker quiet(patients_);
    patients_->setCurrentRow(*desk_->shown());
  }
  emit stateChanged();
}

/// The page is of the tab in sight.
void HealthRoom::showPageButton() {
  const bool isLookBack = tabs_->currentIndex() == kLookBackTab;
  page_->setText(isLookBack ? tr("Look-back for the file…") : tr("Review for the file…"));
  page_->setEnabled(isLookBack ? desk_->lookBack().has_value() : desk_->view().has_value());
}

PlainTable& HealthRoom::zones() const {
  return review_->zones();
}

PlainTable& HealthRoom::links() const {
  return lookBack_->links();
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
  if (health::isSign(record)) desk_->lookBackFrom(record.kind, record.on, lookBack_->hours());
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
