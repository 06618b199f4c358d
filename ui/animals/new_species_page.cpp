// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/new_species_page.h"

#include "ui/animals/animal_text.h"
#include "ui/animals/energy_text.h"
#include "ui/animals/model_picker.h"
#include "ui/animals/species_pane.h"
#include "ui/animals/targets_ladder.h"
#include "ui/shared/card.h"
#include "ui/shared/folding_panes.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <utility>

namespace tarebowl::ui {
namespace {

constexpr double kGramsAKilogram = 1000.0;

std::string trimmed(const QLineEdit& field) {
  return field.text().trimmed().toStdString();
}

QFrame* makeCard(const QString& heading, QWidget* content) {
  auto* card = new QFrame;
  layOutCard(*card, heading)->addWidget(content);
  return card;
}

template <class Stored>
std::vector<std::string> codesOf(const std::vector<Stored>& things) {
  std::vector<std::string> codes;
  for (const Stored& thing : things) codes.push_back(thing.record.code);
  return codes;
}

/// Two columns of fields, one below the other where there is little room.
QWidget* bothOf(QFormLayout& left, QFormLayout& right) {
  auto* both = new FoldingPanes;
  both->setHandleWidth(20);
  for (QFormLayout* form : {&left, &right}) {
    form->setContentsMargins(0, 0, 0, 0);
    auto* column = new QWidget;
    column->setLayout(form);
    both->addWidget(column);
    both->setStretchFactor(both->count() - 1, 1);
  }
  return both;
}

}  // namespace

NewSpeciesPage::NewSpeciesPage(AnimalDesk& desk, ReasonBar& reason, Starters starters, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      lookup_(starters.lookup),
      feeding_(new QComboBox),
      picker_(new ModelPicker(std::move(starters.profiles), starters.lookup)),
      why_(new QLineEdit),
      ladder_(new TargetsLadder(reason,
                                [&desk](const QString& why) {
                                  return animal::LiftedLimit{.who = desk.collection().author().who,
                                                             .on = quantity::isoDate(desk.today()),
                                                             .reason = why.toStdString()};
                                })),
      massUnit_(new QComboBox),
      allometry_(new QComboBox),
      factor_(new QComboBox),
      missing_(new QLabel),
      make_(new QPushButton(tr("Take it into the collection"))),
      makeAndDesign_(new QPushButton(tr("… and design a diet"))) {
  build();
  connect(picker_, &ModelPicker::chosenChanged, this, &NewSpeciesPage::takeModel);
  connect(ladder_, &TargetsLadder::profileEdited, this, &NewSpeciesPage::takeProfile);
  connect(make_, &QPushButton::clicked, this, [this] { make(Then::ShowTheGroup); });
  connect(makeAndDesign_, &QPushButton::clicked, this, [this] { make(Then::DesignADiet); });
  for (QLineEdit* field : findChildren<QLineEdit*>())
    connect(field, &QLineEdit::textChanged, this, &NewSpeciesPage::showMissing);
  connect(allometry_, &QComboBox::currentIndexChanged, this, &NewSpeciesPage::showMissing);
  startAnew();
}

void NewSpeciesPage::build() {
  auto* steps = new QWidget;
  auto* column = new QVBoxLayout(steps);
  column->setContentsMargins(0, 0, 6, 0);
  column->setSpacing(10);
  column->addWidget(makeCard(tr("1 · The species"), makeSpecies()));
  column->addWidget(makeCard(tr("2 · A model species: whose published targets stand in"), makeModel()));
  column->addWidget(makeCard(tr("3 · Limits and house rules on top of it"), makeLimits()));
  column->addWidget(makeCard(tr("4 · The group, its mass and its energy need"), makeGroup()));
  auto* scroll = new QScrollArea;
  scroll->setWidget(steps);
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFocusPolicy(Qt::NoFocus);
  auto* heading = new QLabel(tr("A species new to the collection"));
  QFont large = heading->font();
  large.setPointSizeF(large.pointSizeF() * 1.4);
  large.setBold(true);
  heading->setFont(large);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(16, 10, 16, 10);
  layout->setSpacing(8);
  layout->addWidget(heading);
  layout->addWidget(scroll, 1);
  layout->addWidget(makeFoot());
}

QLineEdit* NewSpeciesPage::addField(QFormLayout& form, const QString& name, const QString& hint) {
  auto* field = new QLineEdit;
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  form.addRow(name, field);
  return field;
}

QWidget* NewSpeciesPage::makeSpecies() {
  auto* left = new QFormLayout;
  auto* right = new QFormLayout;
  name_ = addField(*left, tr("Name of the species"), tr("as the house calls it"));
  scientific_ = addField(*left, tr("Scientific name"), QString());
  feeding_->setAccessibleName(tr("Feeding type"));
  addFeedingTypes(*feeding_);
  right->addRow(tr("Feeding type"), feeding_);
  taxa_ = addField(*right, tr("Belongs to"), tr("mammal, tenrec: the widest first"));
  taxa_->setToolTip(tr("Cautions, model species and energy choices go by these words"));
  return bothOf(*left, *right);
}

QWidget* NewSpeciesPage::makeModel() {
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  why_->setAccessibleName(tr("Why the model stands in"));
  why_->setPlaceholderText(tr("Why does this one stand in? A sentence, which is kept with every target."));
  auto* told =
      new QLabel(tr("Published requirements of a model species are a starting point; the nutritionist and "
                    "the vet decide."));
  told->setProperty("soft", true);
  told->setWordWrap(true);
  layout->addWidget(picker_);
  layout->addWidget(why_);
  layout->addWidget(told);
  return page;
}

QWidget* NewSpeciesPage::makeLimits() {
  ladder_->setMinimumHeight(330);
  return ladder_;
}

QWidget* NewSpeciesPage::makeGroup() {
  auto* left = new QFormLayout;
  auto* right = new QFormLayout;
  group_ = addField(*left, tr("Name of the group"), tr("pair, trio, family …"));
  section_ = addField(*left, tr("Section"), tr("whose keepers feed it"));
  headcount_ = addField(*left, tr("Animals"), tr("how many share the bowl"));
  mass_ = addField(*right, tr("Mass of one animal"), tr("a mean, or what is expected"));
  massUnit_->addItems({unitText(quantity::Unit::Gram), tr("kg")});
  massUnit_->setAccessibleName(tr("Unit of the mass"));
  right->addRow(tr("in"), massUnit_);
  allometry_->setAccessibleName(tr("Energy at 1 kg of body mass"));
  allometry_->addItem(tr("choose…"));
  for (const animal::Allometry& allometry : animal::publishedAllometries())
    allometry_->addItem(choiceText(allometry));
  factor_->setAccessibleName(tr("Factor on the energy"));
  factor_->addItem(tr("no factor"));
  for (const animal::EnergyMultiplier& multiplier : animal::publishedMultipliers())
    factor_->addItem(choiceText(multiplier));
  for (QComboBox* box : {allometry_, factor_}) {
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(24);
  }
  right->addRow(tr("Energy need"), allometry_);
  right->addRow(QString(), factor_);
  return bothOf(*left, *right);
}

QWidget* NewSpeciesPage::makeFoot() {
  auto* foot = new QWidget;
  auto* cancel = new QPushButton(tr("Not now"));
  make_->setObjectName(QStringLiteral("primary"));
  makeAndDesign_->setToolTip(tr("Take it into the collection and go on to a diet for its group"));
  missing_->setWordWrap(true);
  missing_->setAccessibleDescription(tr("What is still missing"));
  connect(cancel, &QPushButton::clicked, this, &NewSpeciesPage::cancelled);
  auto* layout = new QHBoxLayout(foot);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(missing_, 1);
  layout->addWidget(cancel);
  layout->addWidget(make_);
  layout->addWidget(makeAndDesign_);
  return foot;
}

void NewSpeciesPage::startAnew() {
  for (QLineEdit* field : {name_, scientific_, taxa_, why_, group_, section_, headcount_, mass_})
    field->clear();
  for (QComboBox* box : {feeding_, massUnit_, allometry_, factor_}) box->setCurrentIndex(0);
  picker_->clear();
  takeModel();
  name_->setFocus();
}

void NewSpeciesPage::takeModel() {
  const animal::TargetProfile* model = picker_->chosen();
  animal::TargetProfile next;
  if (model != nullptr) {
    next = profileFrom(*model);
    // House rules that were set stay; limits on the old model's targets went with it.
    next.exclusions = profile_.exclusions;
    next.code = "new";
  }
  if (model == nullptr || profile_.parent != next.parent)
    takeProfile(next);
  else
    showMissing();
}

void NewSpeciesPage::takeProfile(const animal::TargetProfile& after) {
  profile_ = after;
  if (!profile_.parent) {
    ladder_->show({}, false);
  } else {
    const auto resolved = animal::resolve(profile_, lookup_);
    const auto* sound = std::get_if<animal::ResolvedProfile>(&resolved);
    ladder_->show(sound == nullptr ? std::nullopt : std::optional(*sound), true);
  }
  showMissing();
}

std::optional<animal::EnergyPlan> NewSpeciesPage::energy() const {
  const int choice = allometry_->currentIndex() - 1;
  if (choice < 0) return std::nullopt;
  animal::EnergyPlan plan =
      animal::planFrom(animal::publishedAllometries()[static_cast<std::size_t>(choice)]);
  const int factor = factor_->currentIndex() - 1;
  if (factor >= 0) {
    const animal::EnergyMultiplier& multiplier =
        animal::publishedMultipliers()[static_cast<std::size_t>(factor)];
    plan.factors.push_back(animal::factorFrom(multiplier, kindOf(multiplier)));
  }
  return plan;
}

NewSpecies NewSpeciesPage::told() const {
  NewSpecies told;
  const Herd& herd = desk_.herd();
  told.species.name = trimmed(*name_);
  told.species.code = codeFrom(name_->text(), codesOf(herd.species));
  told.species.scientificName = trimmed(*scientific_);
  told.species.feedingType = static_cast<animal::FeedingType>(feeding_->currentIndex());
  told.species.taxa = taxaFrom(taxa_->text());
  told.group.name = trimmed(*group_);
  told.group.code = codeFrom(group_->text(), codesOf(herd.groups));
  told.group.species = told.species.code;
  told.group.section = trimmed(*section_);
  bool counted = false;
  const int count = headcount_->text().trimmed().toInt(&counted);
  if (counted && count > 0) told.headcount = count;
  const auto mass = readNumber(mass_->text());
  if (mass && *mass > 0.0)
    told.mass = quantity::Kilograms(massUnit_->currentIndex() == 0 ? *mass / kGramsAKilogram : *mass);
  told.profile = profile_;
  told.profile.code = told.species.code;
  told.profile.name = told.species.name;
  told.profile.whyModel = trimmed(*why_);
  if (picker_->chosen() != nullptr) told.model = lineOf(*picker_->chosen(), lookup_);
  told.energy = energy();
  return told;
}

void NewSpeciesPage::showMissing() {
  const QStringList missing = missingOf(told());
  missing_->setText(missing.isEmpty() ? tr("● Nothing is missing.")
                                      : tr("? Still missing: %1.").arg(missing.join(QStringLiteral(", "))));
  make_->setEnabled(missing.isEmpty());
  makeAndDesign_->setEnabled(missing.isEmpty());
}

void NewSpeciesPage::make(Then then) {
  const NewSpecies whole = told();
  if (!missingOf(whole).isEmpty()) return;
  const QString group = QString::fromStdString(whole.group.code);
  desk_.takeIn(whole, [this, group, then] {
    if (then == Then::DesignADiet) emit dietWanted(group);
  });
  emit done();
}

}  // namespace tarebowl::ui
