// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/import_page.h"

#include "ui/foods/import_preview.h"
#include "ui/foods/import_sentences.h"
#include "ui/foods/import_settings.h"
#include "ui/foods/mapping_delegate.h"
#include "ui/shared/banner.h"
#include "ui/shared/elided_label.h"
#include "ui/shared/folding_panes.h"
#include "ui/shared/paths.h"
#include "ui/shared/table_copy.h"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

using Stage = ImportDesk::Stage;

constexpr int kProgressSteps = 1000;

QFrame* cardWith(QWidget* content) {
  auto* card = new QFrame;
  card->setProperty("card", true);
  auto* layout = new QVBoxLayout(card);
  layout->setContentsMargins(9, 9, 9, 9);
  layout->addWidget(content);
  return card;
}

}  // namespace

ImportPage::ImportPage(ImportDesk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      dialogs_(dialogs),
      model_(new MappingModel(desk, this)),
      mapping_(new QTableView),
      settings_(new ImportSettings(desk)),
      preview_(new ImportPreview(desk)),
      title_(new ElidedLabel),
      complaint_(makeBanner()),
      summary_(new QLabel),
      progress_(new QProgressBar),
      stop_(new QPushButton(tr("Stop"))),
      import_(new QPushButton(tr("Import"))) {
  build();
  wire();
  showStage();
}

void ImportPage::build() {
  constexpr int kMappingWidth = 430;  // its columns are read whole
  auto* halves = new FoldingPanes;
  halves->setHandleWidth(10);
  halves->addWidget(cardWith(makeMapping()));
  halves->widget(0)->setMinimumWidth(kMappingWidth);
  halves->addWidget(cardWith(preview_));
  halves->setStretchFactor(0, 1);
  halves->setStretchFactor(1, 1);
  halves->setWidths({600, 600});
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 10, 16, 10);
  layout->setSpacing(9);
  layout->addWidget(makeHeader());
  layout->addWidget(settings_);
  layout->addWidget(complaint_);
  layout->addWidget(halves, 1);
  layout->addWidget(makeFoot());
}

QWidget* ImportPage::makeHeader() {
  QFont large = title_->font();
  large.setPointSizeF(large.pointSizeF() * 1.4);
  large.setBold(true);
  title_->setFont(large);
  title_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  auto* other = new QPushButton(tr("Another table…"));
  auto* load = new QPushButton(tr("Load mapping…"));
  auto* save = new QPushButton(tr("Save mapping…"));
  back_ = new QPushButton(tr("Back to the foods"));
  load->setToolTip(tr("Read the table as a saved mapping says"));
  save->setToolTip(tr("Keep how this table is read, for its next issue"));
  auto* header = new QWidget;
  auto* layout = new QHBoxLayout(header);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(7);
  layout->addWidget(title_, 1);
  for (QPushButton* button : {other, load, save, back_}) layout->addWidget(button);
  connect(other, &QPushButton::clicked, this, &ImportPage::otherTableWanted);
  connect(load, &QPushButton::clicked, this, &ImportPage::loadMapping);
  connect(save, &QPushButton::clicked, this, &ImportPage::saveMapping);
  connect(back_, &QPushButton::clicked, this, &ImportPage::done);
  return header;
}

QWidget* ImportPage::makeMapping() {
  mapping_->setModel(model_);
  mapping_->setItemDelegate(new MappingDelegate(mapping_));
  mapping_->setAccessibleName(tr("What each column becomes"));
  mapping_->setShowGrid(false);
  mapping_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::SelectedClicked |
                            QAbstractItemView::EditKeyPressed | QAbstractItemView::AnyKeyPressed);
  mapping_->setTabKeyNavigation(false);
  mapping_->setWordWrap(false);
  mapping_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  mapping_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  mapping_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  mapping_->verticalHeader()->hide();
  mapping_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  mapping_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 11);
  mapping_->horizontalHeader()->setHighlightSections(false);
  mapping_->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  mapping_->viewport()->installEventFilter(this);
  addCopyAction(*mapping_);
  auto* told = new QLabel(
      tr("Double-click or type to change what a column becomes: a nutrient by its name or tagname, “SD of "
         "calcium”, or leave out. The preview follows at once."));
  told->setProperty("soft", true);
  told->setWordWrap(true);
  auto* half = new QWidget;
  auto* layout = new QVBoxLayout(half);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  layout->addWidget(mapping_, 1);
  layout->addWidget(told);
  return half;
}

QWidget* ImportPage::makeFoot() {
  summary_->setWordWrap(true);
  summary_->setTextFormat(Qt::PlainText);
  summary_->setAccessibleDescription(tr("What the import will do"));
  progress_->setRange(0, kProgressSteps);
  progress_->setTextVisible(false);
  progress_->setFixedWidth(fontMetrics().averageCharWidth() * 26);
  progress_->setAccessibleName(tr("How far the table is read"));
  import_->setObjectName(QStringLiteral("primary"));
  auto* foot = new QWidget;
  auto* layout = new QHBoxLayout(foot);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(9);
  layout->addWidget(summary_, 1);
  layout->addWidget(progress_);
  layout->addWidget(stop_);
  layout->addWidget(import_);
  return foot;
}

void ImportPage::wire() {
  connect(&desk_, &ImportDesk::stageChanged, this, &ImportPage::showStage);
  connect(&desk_, &ImportDesk::progressed, this,
          [this](double share) { progress_->setValue(static_cast<int>(share * kProgressSteps)); });
  connect(model_, &MappingModel::notUnderstood, this, &ImportPage::complain);
  connect(settings_, &ImportSettings::notUnderstood, this, &ImportPage::complain);
  connect(stop_, &QPushButton::clicked, &desk_, &ImportDesk::cancel);
  connect(import_, &QPushButton::clicked, &desk_, &ImportDesk::import);
}

void ImportPage::complain(const QString& what) {
  complaint_->setText(what);
  complaint_->setVisible(!what.isEmpty());
}

void ImportPage::showStage() {
  const Stage stage = desk_.stage();
  const bool busy = stage == Stage::Reading || stage == Stage::Planning || stage == Stage::Importing;
  title_->setText(tr("Import %1").arg(toText(desk_.file().filename())));
  title_->setToolTip(toText(desk_.file()));
  complain(desk_.complaint());
  if (busy && !progress_->isVisible()) progress_->setValue(0);
  progress_->setVisible(busy);
  stop_->setVisible(busy);
  import_->setVisible(stage != Stage::Imported);
  import_->setEnabled(desk_.mayImport());
  settings_->setEnabled(stage != Stage::Importing);
  back_->setText(stage == Stage::Imported ? tr("To the foods") : tr("Back to the foods"));
  QString summary;
  if (stage == Stage::Reading) summary = tr("reading the head of the table…");
  if (stage == Stage::Planning) summary = tr("looking at each line; nothing is written…");
  if (stage == Stage::Importing) summary = tr("importing; it is kept as a whole or not at all…");
  if (stage == Stage::Planned && desk_.planned()) summary = planText(*desk_.planned());
  if (stage == Stage::Imported && desk_.planned()) summary = doneText(*desk_.planned());
  if (stage == Stage::Failed) summary = tr("Nothing was written.");
  summary_->setText(summary);
}

void ImportPage::saveMapping() {
  if (!dialogs_.mappingToSave) return;
  if (const auto file = dialogs_.mappingToSave(this, desk_.file().parent_path())) desk_.saveMapping(*file);
}

void ImportPage::loadMapping() {
  if (!dialogs_.mappingToOpen) return;
  if (const auto file = dialogs_.mappingToOpen(this, desk_.file().parent_path())) desk_.loadMapping(*file);
}

void ImportPage::fitColumns() {
  const int width = mapping_->viewport()->width();
  const int unit = fontMetrics().averageCharWidth();
  const int units = 13 * unit;
  const int basis = 15 * unit;
  const int rest = width - units - basis;
  QHeaderView* header = mapping_->horizontalHeader();
  const int told = rest * 29 / 100;
  header->resizeSection(MappingModel::Title, told);
  header->resizeSection(MappingModel::Examples, told);
  header->resizeSection(MappingModel::Becomes, rest - 2 * told);
  header->resizeSection(MappingModel::Unit, units);
  header->resizeSection(MappingModel::Basis, basis);
}

bool ImportPage::eventFilter(QObject* watched, QEvent* event) {
  if (watched == mapping_->viewport() && event->type() == QEvent::Resize) fitColumns();
  return QWidget::eventFilter(watched, event);
}

}  // namespace tarebowl::ui
