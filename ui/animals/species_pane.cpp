// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/species_pane.h"

#include "ui/animals/animal_text.h"
#include "ui/animals/cautions_card.h"
#include "ui/animals/history_card.h"
#include "ui/shared/card.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr int kFeedingTypes = static_cast<int>(animal::FeedingType::Granivore) + 1;

}  // namespace

std::vector<std::string> taxaFrom(const QString& text) {
  std::vector<std::string> taxa;
  for (const QString& word : text.split(QLatin1Char(','), Qt::SkipEmptyParts))
    if (!word.trimmed().isEmpty()) taxa.push_back(word.trimmed().toLower().toStdString());
  return taxa;
}

void addFeedingTypes(QComboBox& box) {
  for (int type = 0; type < kFeedingTypes; ++type)
    box.addItem(wordFor(static_cast<animal::FeedingType>(type)));
}

SpeciesPane::SpeciesPane(AnimalDesk& desk, QWidget* parent)
    : QWidget(parent), desk_(desk), feeding_(new QComboBox) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 8, 16, 10);
  layout->setSpacing(10);
  layout->addWidget(makeForm());
  layout->addWidget(new CautionsCard(desk), 3);
  layout->addWidget(new HistoryCard(desk), 1);
  connect(&desk_, &AnimalDesk::pageChanged, this, &SpeciesPane::showPage);
  showPage();
}

QWidget* SpeciesPane::makeForm() {
  auto* card = new QFrame;
  QVBoxLayout* layout = layOutCard(*card, tr("The species"));
  auto* left = new QFormLayout;
  auto* right = new QFormLayout;
  name_ = addField(*left, tr("Name"), QString());
  scientific_ = addField(*left, tr("Scientific name"), QString());
  feeding_->setAccessibleName(tr("Feeding type"));
  addFeedingTypes(*feeding_);
  left->addRow(tr("Feeding type"), feeding_);
  taxa_ = addField(*right, tr("Belongs to"), tr("mammal, primate, lemur: the widest first"));
  taxa_->setToolTip(tr("Cautions, model species and energy choices go by these words"));
  note_ = addField(*right, tr("Note"), QString());
  auto* both = new QHBoxLayout;
  both->setSpacing(20);
  both->addLayout(left, 1);
  both->addLayout(right, 1);
  layout->addLayout(both);
  connect(feeding_, &QComboBox::activated, this, &SpeciesPane::keep);
  return card;
}

QLineEdit* SpeciesPane::addField(QFormLayout& form, const QString& name, const QString& hint) {
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  form.addRow(name, field);
  connect(field, &QLineEdit::editingFinished, this, &SpeciesPane::keep);
  return field;
}

void SpeciesPane::showPage() {
  if (!desk_.page()) return;
  const animal::Species& species = desk_.page()->species.record;
  QStringList taxa;
  for (const std::string& taxon : species.taxa) taxa << QString::fromStdString(taxon);
  name_->setText(QString::fromStdString(species.name));
  scientific_->setText(QString::fromStdString(species.scientificName));
  feeding_->setCurrentIndex(static_cast<int>(species.feedingType));
  taxa_->setText(taxa.join(QStringLiteral(", ")));
  note_->setText(QString::fromStdString(species.note));
}

void SpeciesPane::keep() {
  if (!desk_.page() || desk_.page()->place.kind != AnimalKind::Species) return;
  animal::Species after = desk_.page()->species.record;
  after.name = name_->text().trimmed().toStdString();
  after.scientificName = scientific_->text().trimmed().toStdString();
  after.feedingType = static_cast<animal::FeedingType>(feeding_->currentIndex());
  after.taxa = taxaFrom(taxa_->text());
  after.note = note_->text().trimmed().toStdString();
  if (after.name.empty()) return showPage();
  desk_.changeSpecies(after);
}

}  // namespace tarebowl::ui
