// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/sr28.h"

#include <array>
#include <utility>

namespace tarebowl::reference {

namespace {

// Numbers of SR28 and the core's tagnames. Energy and vitamin A in two units are left to the tests that
// compare them.
constexpr std::array<std::pair<int, std::string_view>, 59> kColumns{{
    {203, "PROCNT"}, {204, "FAT"},      {205, "CHOCDF"}, {207, "ASH"},   {208, "ENERC"},  {209, "STARCH"},
    {210, "SUCS"},   {211, "GLUS"},     {212, "FRUS"},   {213, "LACS"},  {221, "ALC"},    {255, "WATER"},
    {269, "SUGAR"},  {291, "FIBTG"},    {301, "CA"},     {303, "FE"},    {304, "MG"},     {305, "P"},
    {306, "K"},      {307, "NA"},       {309, "ZN"},     {312, "CU"},    {315, "MN"},     {317, "SE"},
    {319, "RETOL"},  {320, "VITA_RAE"}, {321, "CARTB"},  {322, "CARTA"}, {323, "VITE"},   {325, "ERGCAL"},
    {326, "CHOCAL"}, {328, "VITD"},     {334, "CRYPXB"}, {401, "VITC"},  {404, "THIA"},   {405, "RIBF"},
    {406, "NIA"},    {410, "PANTAC"},   {415, "VITB6A"}, {417, "FOL"},   {418, "VITB12"}, {421, "CHOLN"},
    {430, "VITK"},   {501, "TRP"},      {502, "THR"},    {503, "ILE"},   {504, "LEU"},    {505, "LYS"},
    {506, "MET"},    {507, "CYS"},      {508, "PHE"},    {509, "TYR"},   {510, "VAL"},    {511, "ARG"},
    {512, "HIS"},    {601, "CHOLE"},    {606, "FASAT"},  {645, "FAMS"},  {646, "FAPU"},
}};

}  // namespace

std::optional<double> Sr28Food::amount(int nutrient) const {
  const auto place = amounts.find(nutrient);
  return place == amounts.end() ? std::nullopt : std::optional(place->second);
}

bool Sr28Food::hasAll(std::initializer_list<int> nutrients) const {
  for (const int nutrient : nutrients)
    if (!amounts.contains(nutrient)) return false;
  return true;
}

std::optional<std::map<int, Sr28Food>> loadSr28() {
  const auto descriptions = referenceFile("sr28/food_des.csv");
  const auto amounts = referenceFile(kSr28Amounts);
  if (!descriptions || !amounts) return std::nullopt;
  std::map<int, Sr28Food> foods;
  forEachRow(*descriptions, [&](const CsvRow& row) {
    foods[std::stoi(row.at("food_id"))] = {
        row.at("food"), row.number("pro_factor"), row.number("fat_factor"), row.number("carb_factor"), {}};
  });
  forEachRow(*amounts, [&](const CsvRow& row) {
    foods.at(std::stoi(row.at("food_id"))).amounts[std::stoi(row.at("nutr_id"))] =
        row.number("value").value();
  });
  return foods;
}

food::Composition compositionOf(const Sr28Food& item) {
  food::Composition composition;
  for (const auto& [number, tagname] : kColumns)
    if (const auto amount = item.amount(number))
      composition.set(food::findByTagname(tagname).value(), {.amount = quantity::AsFedContent(*amount)});
  return composition;
}

}  // namespace tarebowl::reference
