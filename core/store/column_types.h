// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/animal_words.h"
#include "core/diet/diet_words.h"
#include "core/quantity/basis.h"
#include "core/quantity/date.h"
#include "core/quantity/quantity.h"
#include "core/quantity/unit.h"
#include "core/store/animal_records.h"
#include "core/store/connection.h"

#include <charconv>
#include <string>

template <>
struct tarebowl::animal::Words<tarebowl::store::ProfileStepKind> {
  static constexpr WordList<2> kWords{"in-force", "retired"};
};

/// How values of the trade stand in a column. SOCI gives the functions their names.
// NOLINTBEGIN(readability-identifier-naming)
namespace soci {

template <class Value>
const Value& present(const Value& value, indicator state) {
  if (state == i_null) throw soci_error("a value is missing where there must be one");
  return value;
}

template <>
struct type_conversion<bool> {
  using base_type = int;
  static void from_base(int in, indicator state, bool& out) { out = present(in, state) != 0; }
  static void to_base(bool in, int& out, indicator& state) {
    out = in ? 1 : 0;
    state = i_ok;
  }
};

template <>
struct type_conversion<tarebowl::quantity::Date> {
  using base_type = std::string;
  static void from_base(const std::string& in, indicator state, tarebowl::quantity::Date& out) {
    const auto date = tarebowl::quantity::parseDate(present(in, state));
    if (!date) throw soci_error("\"" + in + "\" is no day");
    out = *date;
  }
  static void to_base(const tarebowl::quantity::Date& in, std::string& out, indicator& state) {
    out = tarebowl::quantity::isoDate(in);
    state = i_ok;
  }
};

template <class Tag>
struct type_conversion<tarebowl::quantity::Quantity<Tag>> {
  using base_type = double;
  static void from_base(double in, indicator state, tarebowl::quantity::Quantity<Tag>& out) {
    out = tarebowl::quantity::Quantity<Tag>(present(in, state));
  }
  static void to_base(const tarebowl::quantity::Quantity<Tag>& in, double& out, indicator& state) {
    out = in.value();
    state = i_ok;
  }
};

template <>
struct type_conversion<tarebowl::food::NutrientId> {
  using base_type = std::string;
  static void from_base(const std::string& in, indicator state, tarebowl::food::NutrientId& out) {
    const auto nutrient = tarebowl::food::findByTagname(present(in, state));
    if (!nutrient) throw soci_error("the nutrient " + in + " is not known to this program");
    out = *nutrient;
  }
  static void to_base(const tarebowl::food::NutrientId& in, std::string& out, indicator& state) {
    out = tarebowl::food::describe(in).tagname;
    state = i_ok;
  }
};

/// A nutrient has no default, which the conversion of optional values would ask for.
template <>
struct type_conversion<std::optional<tarebowl::food::NutrientId>> {
  using base_type = std::string;
  static void from_base(const std::string& in, indicator state,
                        std::optional<tarebowl::food::NutrientId>& out) {
    tarebowl::food::NutrientId nutrient(0);
    out.reset();
    if (state == i_null) return;
    type_conversion<tarebowl::food::NutrientId>::from_base(in, state, nutrient);
    out = nutrient;
  }
  static void to_base(const std::optional<tarebowl::food::NutrientId>& in, std::string& out,
                      indicator& state) {
    state = i_null;
    if (in) type_conversion<tarebowl::food::NutrientId>::to_base(*in, out, state);
  }
};

/// A type that has a parser and a symbol of its own.
template <class T, std::optional<T> (*parse)(std::string_view)>
struct symbol_conversion {
  using base_type = std::string;
  static void from_base(const std::string& in, indicator state, T& out) {
    const auto value = parse(present(in, state));
    if (!value) throw soci_error("\"" + in + "\" is not known to this program");
    out = *value;
  }
  static void to_base(const T& in, std::string& out, indicator& state) {
    out = symbolOf(in);
    state = i_ok;
  }
};

template <>
struct type_conversion<tarebowl::quantity::Unit>
    : symbol_conversion<tarebowl::quantity::Unit, tarebowl::quantity::parseUnit> {};
template <>
struct type_conversion<tarebowl::quantity::Basis>
    : symbol_conversion<tarebowl::quantity::Basis, tarebowl::quantity::parseBasis> {};

template <>
struct type_conversion<tarebowl::food::EnergyMethod>
    : symbol_conversion<tarebowl::food::EnergyMethod, tarebowl::food::parseEnergyMethod> {};

/// An enumeration with words (animal_words.h, diet_words.h).
template <tarebowl::animal::Worded Enum>
struct type_conversion<Enum> {
  using base_type = std::string;
  static void from_base(const std::string& in, indicator state, Enum& out) {
    const auto value = tarebowl::animal::parseWord<Enum>(present(in, state));
    if (!value) throw soci_error("\"" + in + "\" is not known to this program");
    out = *value;
  }
  static void to_base(Enum in, std::string& out, indicator& state) {
    out = tarebowl::animal::symbolOf(in);
    state = i_ok;
  }
};

/// "code version".
template <>
struct type_conversion<tarebowl::animal::ProfileReference> {
  using base_type = std::string;
  static void from_base(const std::string& in, indicator state, tarebowl::animal::ProfileReference& out) {
    const std::size_t gap = present(in, state).rfind(' ');
    if (gap == std::string::npos) throw soci_error("\"" + in + "\" names no version of a profile");
    out.code = in.substr(0, gap);
    std::from_chars(in.data() + gap + 1, in.data() + in.size(), out.version);
  }
  static void to_base(const tarebowl::animal::ProfileReference& in, std::string& out, indicator& state) {
    out = in.code + ' ' + std::to_string(in.version);
    state = i_ok;
  }
};

/// Who, which day and why, a line each.
template <>
struct type_conversion<tarebowl::animal::LiftedLimit> {
  using base_type = std::string;
  static void from_base(const std::string& in, indicator state, tarebowl::animal::LiftedLimit& out) {
    const std::size_t first = present(in, state).find('\n');
    const std::size_t second = first == std::string::npos ? first : in.find('\n', first + 1);
    if (second == std::string::npos) throw soci_error("it is not said who lifted a limit, when and why");
    out = {in.substr(0, first), in.substr(first + 1, second - first - 1), in.substr(second + 1)};
  }
  static void to_base(const tarebowl::animal::LiftedLimit& in, std::string& out, indicator& state) {
    out = in.who + '\n' + in.on + '\n' + in.reason;
    state = i_ok;
  }
};

}  // namespace soci
// NOLINTEND(readability-identifier-naming)
