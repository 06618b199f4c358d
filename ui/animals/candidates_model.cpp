// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/candidates_model.h"

#include "core/animal/target_conversion.h"
#include "core/food/vitamin_units.h"
#include "ui/animals/provenance_text.h"
#include "ui/shared/format.h"
#include "ui/shared/nutrient_text.h"
#include "ui/shared/theme.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::ui {
namespace {

constexpr double kGramKilogram = 1000.0;
/// Bounds within this part of each other are the same number printed on two bases.
constexpr double kSame = 0.02;

animal::TargetScale scaleOf(const animal::TargetProfile& profile) {
  animal::TargetScale scale{.dryMatterFraction = profile.dryMatterFraction};
  if (profile.kcalPerGramDryMatter) scale.kcalPerKgDryMatter = *profile.kcalPerGramDryMatter * kGramKilogram;
  return scale;
}

bool sameBound(const std::optional<double>& a, const std::optional<double>& b) {
  if (!a || !b) return a.has_value() == b.has_value();
  return std::abs(*a - *b) <= kSame * std::max(std::abs(*a), std::abs(*b));
}

QString boundsText(const std::optional<double>& min, const std::optional<double>& max) {
  if (min && max) return CandidatesModel::tr("%1 – %2").arg(measured(*min), measured(*max));
  if (min) return CandidatesModel::tr("≥ %1").arg(measured(*min));
  return max ? CandidatesModel::tr("≤ %1").arg(measured(*max)) : QStringLiteral("?");
}

void widen(std::optional<double>& bound, const std::optional<double>& by) {
  if (!bound) bound = by;
}

/// More candidates than these stand under headers too narrow for a line.
constexpr qsizetype kMostOnOneLine = 2;

/// "dog-adult-nrc2006" as a narrow header has it: the publication below whom it is of.
QString onTwoLines(QString name) {
  const auto dash = name.lastIndexOf(QLatin1Char('-'));
  if (dash > 0) name.replace(dash, 1, QLatin1Char('\n'));
  return name;
}

}  // namespace

CandidatesModel::CandidatesModel(QObject* parent) : QAbstractTableModel(parent) {}

void CandidatesModel::show(const std::vector<animal::ResolvedProfile>& candidates, quantity::Basis basis) {
  beginResetModel();
  names_.clear();
  rows_.clear();
  for (const animal::ResolvedProfile& candidate : candidates)
    names_ << QString::fromStdString(candidate.profile.code);
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    addTargets(i, candidates[i], basis);
    addRatios(i, candidates[i]);
  }
  markDifferences();
  endResetModel();
}

CandidatesModel::Cell& CandidatesModel::cellOf(const QString& name, const QString& unit,
                                               std::size_t candidate) {
  auto row = std::find_if(rows_.begin(), rows_.end(), [&](const Row& one) { return one.name == name; });
  if (row == rows_.end()) {
    rows_.push_back({name, unit, std::vector<Cell>(static_cast<std::size_t>(names_.size()))});
    row = rows_.end() - 1;
  }
  return row->cells[candidate];
}

void CandidatesModel::addTargets(std::size_t candidate, const animal::ResolvedProfile& profile,
                                 quantity::Basis basis) {
  const animal::TargetScale scale = scaleOf(profile.profile);
  for (const auto& entry : profile.targets) {
    const animal::Target& target = entry.rule.target;
    const quantity::Unit unit = food::describe(target.nutrient).unit;
    const auto toOwn = food::toOwnUnitFactor(target.nutrient, target.unit);
    Cell& cell = cellOf(nutrientName(target.nutrient), unitText(unit), candidate);
    cell.stated = true;
    cell.provenance = target.origin.provenance;
    const auto moved = animal::onBasis(target, basis, scale);
    if (!moved || !toOwn) {
      cell.convertible = false;
      continue;
    }
    const auto own = [&](const std::optional<double>& bound) {
      return bound ? std::optional(*bound * *toOwn) : std::nullopt;
    };
    widen(cell.min, own(moved->min));
    widen(cell.max, own(moved->max));
  }
}

void CandidatesModel::addRatios(std::size_t candidate, const animal::ResolvedProfile& profile) {
  for (const auto& entry : profile.ratios) {
    const animal::RatioTarget& ratio = entry.rule.target;
    Cell& cell =
        cellOf(tr("%1 : %2").arg(nutrientName(ratio.of), nutrientWithin(ratio.to)), QString(), candidate);
    cell.stated = true;
    cell.provenance = ratio.origin.provenance;
    widen(cell.min, ratio.min);
    widen(cell.max, ratio.max);
  }
}

void CandidatesModel::markDifferences() {
  for (Row& row : rows_) {
    const auto first = std::find_if(row.cells.begin(), row.cells.end(),
                                    [](const Cell& cell) { return cell.min || cell.max; });
    for (Cell& cell : row.cells)
      if (first != row.cells.end() && (cell.min || cell.max))
        cell.differs = !sameBound(cell.min, first->min) || !sameBound(cell.max, first->max);
  }
}

const CandidatesModel::Cell* CandidatesModel::cellAt(const QModelIndex& index) const {
  if (!index.isValid() || index.row() >= rowCount() || index.column() < FirstCandidate) return nullptr;
  return &rows_[static_cast<std::size_t>(index.row())]
              .cells[static_cast<std::size_t>(index.column() - FirstCandidate)];
}

bool CandidatesModel::differs(const QModelIndex& index) const {
  const Cell* cell = cellAt(index);
  return cell != nullptr && cell->differs;
}

int CandidatesModel::rowOf(const QString& target) const {
  for (std::size_t row = 0; row < rows_.size(); ++row)
    if (rows_[row].name == target) return static_cast<int>(row);
  return -1;
}

int CandidatesModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int CandidatesModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : FirstCandidate + static_cast<int>(names_.size());
}

QVariant CandidatesModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((section >= FirstCandidate ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
  if (section == Target) return tr("target");
  if (section == Unit) return tr("unit");
  const QString name = names_.value(section - FirstCandidate);
  const bool fits = role != Qt::DisplayRole || names_.size() <= kMostOnOneLine;
  return fits ? name : onTwoLines(name);
}

QVariant CandidatesModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  const Cell* cell = cellAt(index);
  const Theme& theme = currentTheme();
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>((cell != nullptr ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (cell == nullptr) {
    if (role == Qt::ForegroundRole && index.column() == Unit) return theme.soft;
    if (role == Qt::DisplayRole) return index.column() == Target ? row.name : row.unit;
    return {};
  }
  const bool known = cell->min || cell->max;
  if (role == Qt::ForegroundRole) return !known ? theme.unknown : cell->differs ? theme.atLimit : theme.ink;
  if (role == Qt::DisplayRole)
    return (cell->differs ? QStringLiteral("◆ ") : QString()) + boundsText(cell->min, cell->max) +
           (cell->provenance == animal::Provenance::FromMemory && known ? QStringLiteral(" ○") : QString());
  if (role != Qt::ToolTipRole) return {};
  if (!cell->stated) return tr("not stated for this candidate");
  if (!known && !cell->convertible)
    return tr("stated on another basis; what it takes to convert it is not known");
  return provenanceText(cell->provenance);
}

}  // namespace tarebowl::ui
