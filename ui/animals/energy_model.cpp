// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/energy_model.h"

#include "ui/animals/animal_text.h"
#include "ui/animals/energy_text.h"
#include "ui/animals/provenance_text.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"

#include <QFont>

#include <stdexcept>

namespace tarebowl::ui {
namespace {

using Kind = animal::EnergyStep::Kind;

bool isEditable(Kind kind) {
  return kind == Kind::MetabolicMass || kind == Kind::Level || kind == Kind::Factor;
}

}  // namespace

EnergyModel::EnergyModel(QObject* parent) : QAbstractTableModel(parent) {}

void EnergyModel::show(const State& state) {
  beginResetModel();
  state_ = state;
  try {
    derivation_ =
        animal::deriveEnergy(state.plan, state.mass.value_or(quantity::Kilograms(1.0)), state.headcount);
  } catch (const std::domain_error&) {
    derivation_ = {};  // a plan that an edit made unsound is never kept
  }
  endResetModel();
}

const animal::EnergyStep& EnergyModel::step(int row) const {
  return derivation_.steps[static_cast<std::size_t>(row)];
}

std::optional<std::size_t> EnergyModel::factorAt(const QModelIndex& index) const {
  if (!index.isValid() || index.row() >= rowCount() || step(index.row()).kind != Kind::Factor)
    return std::nullopt;
  std::size_t factor = 0;
  for (int row = 0; row < index.row(); ++row)
    if (step(row).kind == Kind::Factor) ++factor;
  return factor;
}

int EnergyModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(derivation_.steps.size());
}

int EnergyModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

QVariant EnergyModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  const bool number = section == Number || section == UpTo || section == Gives;
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case Step:
      return tr("step");
    case Number:
      return tr("number");
    case UpTo:
      return tr("up to");
    case Gives:
      return tr("gives");
    default:
      return tr("where it comes from");
  }
}

QString EnergyModel::stepText(const animal::EnergyStep& step) const {
  switch (step.kind) {
    case Kind::BodyMass:
      return tr("Body mass");
    case Kind::MetabolicMass:
      return tr("to the power of");
    case Kind::Level:
      return levelText(state_.plan.level);
    case Kind::Factor:
      return tr("× %1").arg(QString::fromStdString(step.words));
    case Kind::PerAnimal:
      return tr("= per animal and day");
    case Kind::Headcount:
      return tr("× animals");
    case Kind::Group:
      return tr("= the group's day");
  }
  return {};
}

QString EnergyModel::numberText(const animal::EnergyStep& step, int column) const {
  if (column == UpTo) return step.kind == Kind::Factor ? stated(step.byHigh) : QString();
  switch (step.kind) {
    case Kind::BodyMass:
      return state_.mass ? massText(*state_.mass) : QStringLiteral("?");
    case Kind::MetabolicMass:
    case Kind::Factor:
    case Kind::Headcount:
      return stated(step.by);
    case Kind::Level:
      return tr("%1 kcal").arg(measured(step.by));
    default:
      return {};
  }
}

QString EnergyModel::givesText(const animal::EnergyStep& step) const {
  if (!state_.mass) return step.kind == Kind::Headcount ? QString() : QStringLiteral("?");
  switch (step.kind) {
    case Kind::BodyMass:
      return tr("%1 kg").arg(stated(step.low));
    case Kind::MetabolicMass:
      return decimal(step.low, 4);
    case Kind::Headcount:
      return {};
    default:
      return tr("%1 kcal").arg(rangeText(step.low, step.high));
  }
}

QString EnergyModel::originText(const animal::EnergyStep& step) const {
  switch (step.kind) {
    case Kind::BodyMass:
      return state_.massOrigin;
    case Kind::MetabolicMass:
      return tr("with the energy at 1 kg");
    case Kind::Level:
    case Kind::Factor:
      return QStringLiteral("%1 · %2").arg(provenanceText(step.origin.provenance), sourceText(step.origin));
    default:
      return {};
  }
}

QVariant EnergyModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const animal::EnergyStep& shown = step(index.row());
  const bool result = shown.kind == Kind::PerAnimal || shown.kind == Kind::Group;
  const bool number = index.column() == Number || index.column() == UpTo || index.column() == Gives;
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role == Qt::FontRole && result) {
    QFont bold;
    bold.setBold(true);
    return bold;
  }
  if (role == Qt::ForegroundRole && index.column() == Origin)
    return isEditable(shown.kind) && shown.kind != Kind::MetabolicMass
               ? colorOf(shown.origin.provenance, currentTheme())
               : currentTheme().soft;
  if (role == Qt::EditRole) return stated(index.column() == UpTo ? shown.byHigh : shown.by);
  if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
  switch (index.column()) {
    case Step:
      return stepText(shown);
    case Number:
    case UpTo:
      return numberText(shown, index.column());
    case Gives:
      return givesText(shown);
    default:
      return originText(shown);
  }
}

Qt::ItemFlags EnergyModel::flags(const QModelIndex& index) const {
  Qt::ItemFlags flags = QAbstractTableModel::flags(index);
  if (!index.isValid() || index.row() >= rowCount()) return flags;
  const Kind kind = step(index.row()).kind;
  const bool editable =
      (index.column() == Number && isEditable(kind)) || (index.column() == UpTo && kind == Kind::Factor);
  return editable ? flags | Qt::ItemIsEditable : flags;
}

bool EnergyModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  const auto number = readNumber(value.toString());
  if (role != Qt::EditRole || !flags(index).testFlag(Qt::ItemIsEditable) || !number || *number <= 0.0)
    return false;
  animal::EnergyPlan plan = state_.plan;
  const animal::TargetOrigin house = houseOrigin();
  const Kind kind = step(index.row()).kind;
  if (kind == Kind::Factor) {
    animal::EnergyFactor& factor = plan.factors[factorAt(index).value()];
    const bool single = factor.low == factor.high;
    (index.column() == UpTo ? factor.high : factor.low) = *number;
    if (index.column() == Number && (single || factor.high < factor.low)) factor.high = *number;
    if (factor.high < factor.low) return false;
    factor.origin = house;
  } else {
    (kind == Kind::Level ? plan.coefficient : plan.exponent) = *number;
    plan.origin = house;
  }
  if (plan.exponent > 1.5 || plan == state_.plan) return false;
  emit planEdited(plan);
  return true;
}

}  // namespace tarebowl::ui
