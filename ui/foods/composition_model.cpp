// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/composition_model.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr quintptr kTop = 0;  // internal id of a nutrient's row; a sample's is 1 + its nutrient's row

/// A sample's statement per 100 g as fed: by its own water and energy where it has them, else by the food's.
std::optional<food::NutrientValue> asFedValue(const food::Sample& sample, food::NutrientId nutrient,
                                              food::BasisFacts facts) {
  const food::SampleValue* stated = nullptr;
  for (const food::SampleValue& value : sample.values) {
    const bool asFed = food::basisOf(value.amount) == quantity::Basis::AsFed;
    const double amount = food::amountOf(value.amount);
    if (value.nutrient == nutrient) stated = &value;
    if (asFed && value.nutrient == food::nutrients::water() && amount < 100.0)
      facts.dryMatter = quantity::DryMatterShare::fromWaterPer100g(amount);
    if (asFed && value.nutrient == food::nutrients::energy() && amount > 0.0)
      facts.energyPer100g = quantity::Kilocalories(amount);
  }
  if (stated == nullptr) return std::nullopt;
  const quantity::Basis basis = food::basisOf(stated->amount);
  auto read = food::toAsFed(nutrient,
                            {.amount = food::amountOf(stated->amount),
                             .sd = stated->sd,
                             .unit = food::describe(nutrient).unit,
                             .per = basis == quantity::Basis::Energy ? 1000.0 : 100.0,
                             .basis = basis,
                             .sampleCount = stated->count,
                             .qualifier = stated->qualifier},
                            facts);
  if (auto* value = std::get_if<food::NutrientValue>(&read)) return std::move(*value);
  return std::nullopt;
}

}  // namespace

const std::vector<food::NutrientId>& alwaysShown() {
  static const std::vector<food::NutrientId> nutrients = [] {
    std::vector<food::NutrientId> ids;
    for (const char* tagname :
         {"WATER", "PROCNT", "FAT", "ASH", "CHOCDF", "FIBND", "FIBAD", "ENERC",    "CA",   "P",    "MG",  "K",
          "NA",    "FE",     "ZN",  "CU",  "MN",     "SE",    "ID",    "VITA_RAE", "VITD", "VITE", "VITC"})
      if (const auto id = food::findByTagname(tagname)) ids.push_back(*id);
    return ids;
  }();
  return nutrients;
}

bool isShownBefore(food::NutrientId a, food::NutrientId b) {
  const auto place = [](food::NutrientId id) {
    // Energy is asked for right after the proximates, before fibre.
    const food::NutrientGroup group = food::describe(id).group;
    const bool energy = group == food::NutrientGroup::Energy;
    return std::pair(energy ? 1 : 2 * static_cast<int>(group), id.index());
  };
  return place(a) < place(b);
}

CompositionModel::CompositionModel(FoodDesk& desk, QObject* parent)
    : QAbstractItemModel(parent), desk_(desk) {
  connect(&desk_, &FoodDesk::energyChanged, this, [this] { setBasis(basis_); });
  connect(&desk, &FoodDesk::pageChanged, this, &CompositionModel::rebuild);
  rebuild();
}

void CompositionModel::rebuild() {
  beginResetModel();
  rows_.clear();
  facts_ = {};
  if (desk_.page()) {
    facts_ = factsOf(desk_.page()->composition);
    for (const food::DerivedValue& derived : desk_.page()->derivation.values) rows_.push_back(rowOf(derived));
    addCooked();
    for (const food::NutrientId nutrient : alwaysShown())
      if (!has(nutrient)) rows_.push_back({.derived = {.nutrient = nutrient}});
  }
  std::stable_sort(rows_.begin(), rows_.end(), [](const Row& a, const Row& b) {
    return isShownBefore(a.derived.nutrient, b.derived.nutrient);
  });
  endResetModel();
}

bool CompositionModel::has(food::NutrientId nutrient) const {
  return std::any_of(rows_.begin(), rows_.end(),
                     [&](const Row& row) { return row.derived.nutrient == nutrient; });
}

/// What was worked out from the raw food or the recipe stands in the composition and not in the samples'
/// derivation.
void CompositionModel::addCooked() {
  const food::Composition& composition = desk_.page()->composition;
  const bool isMixed = desk_.page()->food.record.recipe.has_value();
  for (const food::NutrientId nutrient : composition.knownNutrients())
    if (!has(nutrient))
      rows_.push_back({.derived = {.nutrient = nutrient,
                                   .value = *composition.find(nutrient),
                                   .by = isMixed ? food::DerivedBy::Recipe : food::DerivedBy::Cooking},
                       .known = true});
}

CompositionModel::Row CompositionModel::rowOf(const food::DerivedValue& derived) const {
  Row row{.derived = derived,
          .known = !derived.used.empty() || derived.by == food::DerivedBy::Override ||
                   derived.by == food::DerivedBy::Cooking || derived.by == food::DerivedBy::Recipe ||
                   derived.by == food::DerivedBy::SumOfParts};
  for (const std::size_t used : derived.used) row.statements.push_back({.sample = used});
  for (const food::LeftOut& left : derived.leftOut)
    row.statements.push_back({.sample = left.sample, .leftOut = left.because});
  std::sort(row.statements.begin(), row.statements.end(),
            [](const Statement& a, const Statement& b) { return a.sample < b.sample; });
  for (Statement& statement : row.statements)
    statement.value = asFedValue(desk_.page()->samples[statement.sample].sample, derived.nutrient, facts_);
  return row;
}

void CompositionModel::setBasis(CompositionBasis basis) {
  basis_ = basis;
  for (int row = 0; row < rowCount(); ++row) {
    const QModelIndex top = index(row, 0);
    emit dataChanged(top, index(row, ColumnCount - 1));
    if (rowCount(top) > 0) emit dataChanged(index(0, 0, top), index(rowCount(top) - 1, ColumnCount - 1, top));
  }
  emit headerDataChanged(Qt::Horizontal, Value, Value);
}

QModelIndex CompositionModel::index(int row, int column, const QModelIndex& parent) const {
  if (row < 0 || row >= rowCount(parent) || column < 0 || column >= ColumnCount) return {};
  return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : kTop);
}

QModelIndex CompositionModel::parent(const QModelIndex& index) const {
  if (!index.isValid() || index.internalId() == kTop) return {};
  return createIndex(static_cast<int>(index.internalId()) - 1, 0, kTop);
}

int CompositionModel::rowCount(const QModelIndex& parent) const {
  if (!parent.isValid()) return static_cast<int>(rows_.size());
  if (parent.internalId() != kTop || parent.column() != 0) return 0;
  return static_cast<int>(rows_[static_cast<std::size_t>(parent.row())].statements.size());
}

int CompositionModel::columnCount(const QModelIndex& /*parent*/) const {
  return ColumnCount;
}

std::optional<food::NutrientId> CompositionModel::nutrientAt(const QModelIndex& index) const {
  if (!index.isValid()) return std::nullopt;
  const QModelIndex top = index.internalId() == kTop ? index : parent(index);
  return rows_[static_cast<std::size_t>(top.row())].derived.nutrient;
}

std::optional<SampleId> CompositionModel::sampleAt(const QModelIndex& index) const {
  if (!index.isValid() || index.internalId() == kTop || !desk_.page()) return std::nullopt;
  const Row& row = rows_[static_cast<std::size_t>(parent(index).row())];
  return desk_.page()->samples[row.statements[static_cast<std::size_t>(index.row())].sample].id;
}

QModelIndex CompositionModel::indexOf(food::NutrientId nutrient) const {
  for (int row = 0; row < rowCount(); ++row)
    if (rows_[static_cast<std::size_t>(row)].derived.nutrient == nutrient) return index(row, 0);
  return {};
}

std::optional<double> CompositionModel::onBasis(const Row& row,
                                                std::optional<quantity::AsFedContent> content) const {
  if (!content) return std::nullopt;
  return shownAmount(row.derived.nutrient, basis_, *content, facts_, desk_.energy());
}

QString CompositionModel::nutrientText(const Row& row, int column) const {
  const food::NutrientValue& value = row.derived.value;
  switch (column) {
    case Nutrient:
      return nutrientName(row.derived.nutrient);
    case Value:
      if (!row.known) return QStringLiteral("?");
      return valueText(row.derived.nutrient, onBasis(row, value.amount), value.qualifier, desk_.energy());
    case Scatter:
      return row.known ? scatterText(onBasis(row, value.sd), value.sampleCount) : QString();
    case Origin:
      return desk_.page() ? originText(row.derived, desk_.page()->samples) : QString();
    default:
      return {};
  }
}

QString CompositionModel::statementText(const Row& row, const Statement& statement, int column) const {
  const food::Sample& sample = desk_.page()->samples[statement.sample].sample;
  const auto& value = statement.value;
  switch (column) {
    case Nutrient:
      return sampleText(sample);
    case Value:
      if (!value) return QStringLiteral("?");
      return valueText(row.derived.nutrient, onBasis(row, value->amount), value->qualifier, desk_.energy());
    case Scatter:
      return value ? scatterText(onBasis(row, value->sd), value->sampleCount) : QString();
    case Origin:
      return statement.leftOut ? leftOutText(*statement.leftOut, sample) : tr("counted");
    default:
      return {};
  }
}

QVariant CompositionModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const bool top = index.internalId() == kTop;
  const Row& row = rows_[static_cast<std::size_t>(top ? index.row() : parent(index).row())];
  if (role == Qt::TextAlignmentRole) {
    const bool right = index.column() == Value || index.column() == Scatter;
    return static_cast<int>((right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role == UnknownRole) return top && !row.known;
  const Statement* statement = top ? nullptr : &row.statements[static_cast<std::size_t>(index.row())];
  if (role == LeftOutRole) return statement != nullptr && statement->leftOut.has_value();
  if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
  return top ? nutrientText(row, index.column()) : statementText(row, *statement, index.column());
}

QVariant CompositionModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) {
    const bool right = section == Value || section == Scatter;
    return static_cast<int>((right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case Nutrient:
      return tr("nutrient");
    case Value:
      return textOf(basis_, desk_.energy());
    case Scatter:
      return tr("scatter");
    case Origin:
      return tr("where it comes from");
    default:
      return {};
  }
}

}  // namespace tarebowl::ui
