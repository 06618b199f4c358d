// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/nutrient.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <set>
#include <string>

namespace tarebowl::food {
namespace {

using quantity::Unit;

struct UnitList {
  Unit unit;
  std::vector<std::string> tagnames;
};

// The unit list of the problem format, tagname by tagname (amino and fatty acids by INFOODS tagname).
const std::array kFormatUnits{
    UnitList{Unit::Gram,
             {"WATER",  "PROCNT", "FAT",    "ASH",     "FIBC",    "FIBTG",   "FIBND",   "FIBAD",  "CHOCDF",
              "CHOAVL", "STARCH", "SUGAR",  "ARG",     "HIS",     "ILE",     "LEU",     "LYS",    "MET",
              "CYS",    "PHE",    "TYR",    "THR",     "TRP",     "VAL",     "TAU",     "FASAT",  "FAMS",
              "FAPU",   "FAPUN3", "FAPUN6", "F18D2N6", "F18D3N3", "F20D4N6", "F20D5N3", "F22D6N3"}},
    UnitList{Unit::Milligram,
             {"CA",   "P",    "MG",   "K",   "NA",     "CL",     "FE",     "ZN",     "CU",    "MN",   "VITC",
              "VITE", "THIA", "RIBF", "NIA", "VITB6A", "PANTAC", "OXALAC", "PHYTAC", "CHOLE", "CHOLN"}},
    UnitList{Unit::Microgram,
             {"SE", "ID", "VITA_RAE", "RETOL", "CARTB", "VITD", "VITK", "FOL", "VITB12", "BIOT"}},
    UnitList{Unit::Kilocalorie, {"ENERC"}},
};

TEST(Nutrients, EveryTagnameOfTheProblemFormatIsKnownInItsUnit) {
  for (const auto& list : kFormatUnits) {
    for (const auto& tagname : list.tagnames) {
      const auto id = findByTagname(tagname);
      ASSERT_TRUE(id) << tagname;
      EXPECT_EQ(describe(*id).tagname, tagname);
      EXPECT_EQ(describe(*id).unit, list.unit) << tagname;
    }
  }
}

TEST(Nutrients, EachHasItsOwnTagnameANameAndSensibleDecimals) {
  std::set<std::string> tagnames;
  for (const Nutrient& nutrient : allNutrients()) {
    EXPECT_TRUE(tagnames.insert(nutrient.tagname).second) << nutrient.tagname;
    EXPECT_THAT(nutrient.tagname, testing::MatchesRegex("[A-Z][A-Z0-9_+]*"));
    EXPECT_FALSE(nutrient.name.empty()) << nutrient.tagname;
    EXPECT_THAT(nutrient.decimals, testing::AllOf(testing::Ge(0), testing::Le(3))) << nutrient.tagname;
  }
  EXPECT_GE(tagnames.size(), 60U);
}

TEST(Nutrients, TocphaIsTheOtherTagnameOfVitaminE) {
  EXPECT_EQ(findByTagname("TOCPHA"), findByTagname("VITE"));
  EXPECT_TRUE(findByTagname("TOCPHA"));
}

TEST(Nutrients, ATagnameIsReadExactlyAndALabWordIsNone) {
  EXPECT_FALSE(findByTagname("ca"));
  EXPECT_FALSE(findByTagname(" CA"));
  EXPECT_FALSE(findByTagname("CP"));
  EXPECT_FALSE(findByTagname(""));
}

struct LabWord {
  const char* label;
  const char* tagname;
};

// How laboratories and the two open tables (SR28 abbreviations, the Indian table's columns) head a column.
constexpr std::array kLabWords{
    LabWord{"Crude protein", "PROCNT"},
    LabWord{"cp", "PROCNT"},
    LabWord{"Protein", "PROCNT"},
    LabWord{"protcnt", "PROCNT"},
    LabWord{"Ether extract", "FAT"},
    LabWord{"EE", "FAT"},
    LabWord{"fatce", "FAT"},
    LabWord{"Moisture", "WATER"},
    LabWord{"Crude fiber", "FIBC"},
    LabWord{"Crude fibre", "FIBC"},
    LabWord{"NDF", "FIBND"},
    LabWord{"a.d.f.", "FIBAD"},
    LabWord{"LYS_G", "LYS"},
    LabWord{"HISTN_G", "HIS"},
    LabWord{"F18D2CN6", "F18D2N6"},
    LabWord{"choavldf", "CHOAVL"},
    LabWord{"facn3", "FAPUN3"},
    LabWord{"vitb6c", "VITB6A"},
    LabWord{"Vitamin B-12", "VITB12"},
    LabWord{"vitamin  b12", "VITB12"},
    LabWord{"CRYPX", "CRYPXB"},
    LabWord{"β-Carotene", "CARTB"},
    LabWord{"Calcium, Ca", "CA"},
    LabWord{"p", "P"},
    LabWord{"n-3 fatty acids", "FAPUN3"},
    LabWord{"Saccharose", "SUCS"},
};

TEST(Nutrients, LabWordsAreFoundWithoutRegardToCaseSpacesAndPunctuation) {
  for (const auto& word : kLabWords) {
    const auto id = findBySynonym(word.label);
    ASSERT_TRUE(id) << word.label;
    EXPECT_EQ(describe(*id).tagname, word.tagname) << word.label;
  }
}

TEST(Nutrients, ColumnsThatAreNoNutrientAreNotGuessed) {
  EXPECT_FALSE(findBySynonym("Lab number"));
  EXPECT_FALSE(findBySynonym(""));
  EXPECT_FALSE(findBySynonym("-"));
  // The same amount in another unit under the nutrient's name would be read a factor wrong.
  EXPECT_FALSE(findBySynonym("ENERC_KJ"));
  EXPECT_FALSE(findBySynonym("VITA_IU"));
}

TEST(Nutrients, ASlipOfThePenFindsItsNeighbour) {
  EXPECT_EQ(nearestTagname("PROCN"), "PROCNT");
  EXPECT_EQ(nearestTagname("WATTER"), "WATER");
  EXPECT_EQ(nearestTagname("ca"), "CA");
  EXPECT_EQ(nearestTagname("F18D3N4"), "F18D3N3");
  EXPECT_EQ(nearestTagname("Calcium"), "CA");
}

TEST(Nutrients, EvenNonsenseGetsSomeKnownNeighbour) {
  EXPECT_TRUE(findByTagname(nearestTagname("")));
  EXPECT_TRUE(findByTagname(nearestTagname(std::string(1'000'000, 'x'))));
  EXPECT_TRUE(findByTagname(nearestTagname("\xff\xfe µ 無")));
}

TEST(Nutrients, TheOnesThatFormulasNameAreWhatTheySay) {
  EXPECT_EQ(describe(nutrients::water()).tagname, "WATER");
  EXPECT_EQ(describe(nutrients::protein()).tagname, "PROCNT");
  EXPECT_EQ(describe(nutrients::fat()).tagname, "FAT");
  EXPECT_EQ(describe(nutrients::ash()).tagname, "ASH");
  EXPECT_EQ(describe(nutrients::crudeFibre()).tagname, "FIBC");
  EXPECT_EQ(describe(nutrients::totalDietaryFibre()).tagname, "FIBTG");
  EXPECT_EQ(describe(nutrients::carbohydrateByDifference()).tagname, "CHOCDF");
  EXPECT_EQ(describe(nutrients::starch()).tagname, "STARCH");
  EXPECT_EQ(describe(nutrients::sugar()).tagname, "SUGAR");
  EXPECT_EQ(describe(nutrients::energy()).tagname, "ENERC");
  EXPECT_EQ(describe(nutrients::calcium()).tagname, "CA");
  EXPECT_EQ(describe(nutrients::phosphorus()).tagname, "P");
}

}  // namespace
}  // namespace tarebowl::food
