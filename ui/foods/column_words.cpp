// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/column_words.h"

#include "ui/foods/sample_values_model.h"
#include "ui/shared/nutrient_text.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

using exchange::ColumnRole;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Words)
};

/// What a column is, where it is no nutrient's.
QString roleWord(ColumnRole role) {
  switch (role) {
    case ColumnRole::Ignored:
      return Words::tr("leave out");
    case ColumnRole::Food:
      return Words::tr("food");
    case ColumnRole::Code:
      return Words::tr("food's code");
    case ColumnRole::Group:
      return Words::tr("food group");
    case ColumnRole::Form:
      return Words::tr("form");
    case ColumnRole::Source:
      return Words::tr("source");
    case ColumnRole::Nutrient:
      return Words::tr("nutrient");
    case ColumnRole::Value:
      return Words::tr("value");
    case ColumnRole::Unit:
      return Words::tr("unit");
    case ColumnRole::Sd:
      return Words::tr("SD");
    case ColumnRole::StandardError:
      return Words::tr("standard error");
    case ColumnRole::Count:
      return Words::tr("n");
    case ColumnRole::Qualifier:
      return Words::tr("qualifier");
    case ColumnRole::Basis:
      return Words::tr("basis");
  }
  return {};
}

constexpr ColumnRole kOfFood[] = {ColumnRole::Ignored, ColumnRole::Food, ColumnRole::Code,
                                  ColumnRole::Group,   ColumnRole::Form, ColumnRole::Source};
constexpr ColumnRole kOfRow[] = {ColumnRole::Nutrient, ColumnRole::Value,    ColumnRole::Unit,
                                 ColumnRole::Basis,    ColumnRole::Sd,       ColumnRole::StandardError,
                                 ColumnRole::Count,    ColumnRole::Qualifier};
constexpr ColumnRole kBeside[] = {ColumnRole::Sd, ColumnRole::StandardError, ColumnRole::Count,
                                  ColumnRole::Qualifier, ColumnRole::Source};

QString besideWord(ColumnRole role, const QString& nutrient) {
  return Words::tr("%1 of %2").arg(roleWord(role), nutrient);
}

/// "Calcium (CA)", "ca", "Calcium, Ca".
std::optional<food::NutrientId> nutrientIn(const QString& text) {
  if (const auto called = nutrientCalled(text)) return called;
  const auto open = text.lastIndexOf(QLatin1Char('('));
  if (open < 0 || !text.endsWith(QLatin1Char(')'))) return std::nullopt;
  return nutrientCalled(text.mid(open + 1).chopped(1));
}

std::optional<ColumnRole> roleIn(const QString& text, bool isLong) {
  for (const ColumnRole role : kOfFood)
    if (text.compare(roleWord(role), Qt::CaseInsensitive) == 0) return role;
  if (!isLong) return std::nullopt;
  for (const ColumnRole role : kOfRow)
    if (text.compare(roleWord(role), Qt::CaseInsensitive) == 0) return role;
  return std::nullopt;
}

}  // namespace

QString nutrientWithTag(food::NutrientId nutrient) {
  return QStringLiteral("%1 (%2)").arg(nutrientName(nutrient),
                                       QString::fromStdString(food::describe(nutrient).tagname));
}

QString becomesText(const exchange::ColumnUse& use, bool isLong) {
  if (isLong || !use.nutrient) return roleWord(use.role);
  const QString nutrient = nutrientWithTag(*use.nutrient);
  return use.role == ColumnRole::Value ? nutrient : besideWord(use.role, nutrient);
}

std::optional<exchange::ColumnUse> readBecomes(const QString& text, exchange::ColumnUse use, bool isLong) {
  const QString words = text.trimmed();
  const ColumnRole before = use.role;
  use.nutrient.reset();
  if (const auto role = roleIn(words, isLong)) {
    use.role = *role;
    if (use.role != before) use.unit.reset();
    return use;
  }
  if (isLong) return std::nullopt;
  for (const ColumnRole role : kBeside) {
    const QString lead = besideWord(role, QString());
    if (!words.startsWith(lead, Qt::CaseInsensitive)) continue;
    use.role = role;
    use.nutrient = nutrientIn(words.mid(lead.size()));
    return use.nutrient ? std::optional(use) : std::nullopt;
  }
  use.role = ColumnRole::Value;
  use.nutrient = nutrientIn(words);
  return use.nutrient ? std::optional(use) : std::nullopt;
}

QStringList becomesChoices(bool isLong) {
  QStringList choices;
  for (const ColumnRole role : kOfFood) choices << roleWord(role);
  if (isLong) {
    for (const ColumnRole role : kOfRow) choices << roleWord(role);
    return choices;
  }
  QStringList nutrients;
  for (const food::Nutrient& nutrient : food::allNutrients())
    nutrients << nutrientWithTag(food::findByTagname(nutrient.tagname).value());
  choices += nutrients;
  for (const ColumnRole role : kBeside)
    for (const QString& nutrient : nutrients) choices << besideWord(role, nutrient);
  return choices;
}

QString unitWords(const std::optional<exchange::UnitText>& unit) {
  if (!unit) return {};
  exchange::UnitText plain = *unit;
  if (plain.basis != quantity::Basis::Energy) plain.basis.reset();
  QString words = QString::fromStdString(exchange::unitText(plain));
  if (words.endsWith(QLatin1String("/1000 g"))) words = words.chopped(6) + QStringLiteral("kg");
  return words;
}

QString basisWords(quantity::Basis basis) {
  switch (basis) {
    case quantity::Basis::DryMatter:
      return Words::tr("dry matter");
    case quantity::Basis::Energy:
      return Words::tr("energy (ME)");
    default:
      return Words::tr("as fed");
  }
}

}  // namespace tarebowl::ui
