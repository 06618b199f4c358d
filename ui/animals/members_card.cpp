// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/members_card.h"

#include "ui/animals/animal_text.h"
#include "ui/animals/members_model.h"
#include "ui/shared/card.h"
#include "ui/shared/plain_table.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace tarebowl::ui {
namespace {

QLineEdit* makeField(QHBoxLayout& row, const QString& name, int stretch) {
  auto* label = new QLabel(name);
  label->setProperty("soft", true);
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  row.addWidget(label);
  row.addWidget(field, stretch);
  return field;
}

}  // namespace

MembersCard::MembersCard(AnimalDesk& desk, QWidget* parent)
    : QFrame(parent),
      desk_(desk),
      model_(new MembersModel(desk, this)),
      table_(new PlainTable(tr("Animals of the group"))),
      candidates_(new QComboBox),
      join_(new QPushButton(tr("Put in"))),
      end_(new QPushButton(tr("Leaves today"))),
      open_(new QPushButton(tr("Open"))) {
  build();
  wire();
  showPage();
}

void MembersCard::build() {
  QVBoxLayout* layout = layOutCard(*this, tr("The group and its animals"));
  auto* facts = new QHBoxLayout;
  facts->setSpacing(7);
  name_ = makeField(*facts, tr("Name"), 3);
  section_ = makeField(*facts, tr("Section"), 2);
  count_ = makeField(*facts, tr("Animals"), 0);
  count_->setFixedWidth(fontMetrics().averageCharWidth() * 6 + 16);
  count_->setToolTip(tr("How many share the bowl, for a colony whose animals are not known one by one"));
  layout->addLayout(facts);
  table_->setModel(model_);
  table_->setWideColumn(MembersModel::Stay);
  layout->addWidget(table_, 1);
  candidates_->setAccessibleName(tr("Animals of the species that are not in this group"));
  join_->setToolTip(tr("This animal is in the group from today on"));
  end_->setToolTip(tr("Today is the first day on which the chosen animal is not in the group any more"));
  open_->setToolTip(tr("Go to the chosen animal's own page"));
  auto* add = new QPushButton(tr("New animal"));
  connect(add, &QPushButton::clicked, this, &MembersCard::addNew);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(7);
  for (QWidget* widget : std::initializer_list<QWidget*>{open_, end_}) buttons->addWidget(widget);
  buttons->addStretch(1);
  for (QWidget* widget : std::initializer_list<QWidget*>{candidates_, join_, add}) buttons->addWidget(widget);
  layout->addLayout(buttons);
}

void MembersCard::wire() {
  connect(&desk_, &AnimalDesk::pageChanged, this, &MembersCard::showPage);
  connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, &MembersCard::showButtons);
  for (QLineEdit* field : {name_, section_, count_})
    connect(field, &QLineEdit::editingFinished, this, &MembersCard::keepFacts);
  connect(join_, &QPushButton::clicked, this, &MembersCard::join);
  connect(end_, &QPushButton::clicked, this, [this] {
    if (const store::StoredMembership* stay = model_->stayAt(table_->currentIndex())) desk_.endStay(stay->id);
  });
  const auto openChosen = [this] {
    const store::StoredMembership* stay = model_->stayAt(table_->currentIndex());
    const auto* individual = stay == nullptr ? nullptr : desk_.herd().individualOf(stay->record.individual);
    if (individual != nullptr)
      emit shownWanted({AnimalKind::Individual, static_cast<std::int64_t>(individual->id)});
  };
  connect(open_, &QPushButton::clicked, this, openChosen);
  connect(table_, &QTableView::activated, this, openChosen);
}

void MembersCard::showPage() {
  const auto& page = desk_.page();
  if (!page || !page->group) return;
  const animal::Group& group = page->group->record;
  name_->setText(QString::fromStdString(group.name));
  name_->setCursorPosition(0);  // a long name is read from its beginning
  section_->setText(QString::fromStdString(group.section));
  section_->setCursorPosition(0);
  const auto stays = store::staysOf(page->stays);
  const bool known = !animal::membersOn(stays, group.code, desk_.today()).empty();
  const auto count = headcountOf(*page, desk_.today());
  count_->setText(count ? QString::number(*count) : QString());
  count_->setPlaceholderText(QStringLiteral("?"));
  count_->setReadOnly(known);
  candidates_->clear();
  for (const store::StoredIndividual& one : page->animals) {
    const bool inside = std::any_of(stays.begin(), stays.end(), [&](const animal::Membership& stay) {
      return stay.individual == one.record.code && !stay.until;
    });
    if (!inside && !one.record.left) candidates_->addItem(QString::fromStdString(one.record.code));
  }
  candidates_->setVisible(candidates_->count() > 0);
  join_->setVisible(candidates_->count() > 0);
  if (model_->rowCount() > 0 && !table_->currentIndex().isValid())
    table_->setCurrentIndex(model_->index(0, 0));
  showButtons();
}

void MembersCard::showButtons() {
  const store::StoredMembership* stay = model_->stayAt(table_->currentIndex());
  open_->setEnabled(stay != nullptr);
  end_->setEnabled(stay != nullptr && !stay->record.until);
}

void MembersCard::keepFacts() {
  if (!desk_.page() || !desk_.page()->group) return;
  animal::Group after = desk_.page()->group->record;
  after.name = name_->text().trimmed().toStdString();
  after.section = section_->text().trimmed().toStdString();
  bool read = false;
  const int count = count_->text().trimmed().toInt(&read);
  const bool counted =
      read && count > 0 && !count_->isReadOnly() && headcountOf(*desk_.page(), desk_.today()) != count;
  if (counted) {
    std::erase_if(after.counts, [this](const animal::GroupCount& old) { return old.from == desk_.today(); });
    after.counts.push_back({desk_.today(), count});
  }
  if (after.name.empty()) return showPage();
  desk_.changeGroup(after);
}

void MembersCard::join() {
  if (!desk_.page() || !desk_.page()->group || candidates_->currentText().isEmpty()) return;
  desk_.addStay({desk_.page()->group->record.code, candidates_->currentText().toStdString(), desk_.today()});
}

void MembersCard::addNew() {
  if (!desk_.page() || !desk_.page()->group) return;
  const animal::Group& group = desk_.page()->group->record;
  std::vector<std::string> taken;
  for (const store::StoredIndividual& one : desk_.herd().individuals) taken.push_back(one.record.code);
  const animal::Individual individual{.code = codeFrom(QString::fromStdString(group.code), taken),
                                      .species = group.species,
                                      .arrived = desk_.today()};
  desk_.addIndividual(individual, group.code);
}

}  // namespace tarebowl::ui
