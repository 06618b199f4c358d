// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>

namespace tarebowl::app {
namespace {

using nlohmann::json;
using ::testing::AllOf;
using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::StartsWith;

constexpr const char* kPowder = R"({ "format": "tarebowl-problem/1",
  "foods": [{ "id": "limestone", "name": "Limestone", "per_100_g": { "WATER": 0, "CA": 38000 }, "max_g": 10 },
            { "id": "water", "name": "Water", "per_100_g": { "WATER": 100 }, "max_g": 10 }],
  "targets": [{ "id": "ca", "nutrient": "CA", "min": MIN, "unit": "mg", "basis": "day", "hard": true }] })";

/// 1 g of limestone holds 380 mg of calcium, and at most 10 g may be given.
std::string calciumOfAtLeast(const std::string& milligrams) {
  std::string text = kPowder;
  return text.replace(text.find("MIN"), 3, milligrams);
}

bool isOneLine(const std::string& text) {
  return std::count(text.begin(), text.end(), '\n') == 1 && text.back() == '\n';
}

TEST(Program, SolvesAProblemToJsonAlone) {
  const Outcome outcome = tarebowl({"solve", fileWith("p.json", calciumOfAtLeast("700")).string()});
  EXPECT_EQ(outcome.status, 0);
  EXPECT_THAT(outcome.err, IsEmpty());
  const json result = json::parse(outcome.out);
  EXPECT_EQ(result["format"], "tarebowl-result/1");
  EXPECT_EQ(result["status"], "balanced");
  EXPECT_GE(result["grams"]["limestone"], 2);  // 2 x 380 = 760 mg; one gram is not enough
}

TEST(Program, SolvesEverySampleInJson) {
  for (const auto& entry : std::filesystem::directory_iterator(sample(""))) {
    if (entry.path().extension() != ".json") continue;
    const Outcome outcome = tarebowl({"solve", entry.path().string(), "--seconds", "2"});
    EXPECT_EQ(outcome.status, 0) << entry.path() << outcome.err;
    EXPECT_EQ(json::parse(outcome.out)["format"], "tarebowl-result/1");
  }
}

TEST(Program, ReadsAProblemFromStandardInput) {
  const Outcome outcome = tarebowl({"solve", "-"}, calciumOfAtLeast("700"));
  EXPECT_EQ(outcome.status, 0);
  EXPECT_EQ(json::parse(outcome.out)["status"], "balanced");
}

TEST(Program, EndsWith3WhereTheHardRulesContradictEachOther) {
  const Outcome outcome = tarebowl({"solve", "-"}, calciumOfAtLeast("4000"));  // 10 g hold 3800 mg
  EXPECT_EQ(outcome.status, 3);
  EXPECT_THAT(outcome.err, IsEmpty());
  const json result = json::parse(outcome.out);
  EXPECT_EQ(result["status"], "impossible");
  EXPECT_EQ(result["grams"], json::object());
  EXPECT_EQ(result["conflict"], json::array({"ca"}));
}

TEST(Program, NamesRemediesFromALarderAndExplainsWhenAsked) {
  const std::string larder = fileWith("larder.json", R"({"format": "tarebowl-larder/1", "foods": [
      {"id": "chalk", "per_100_g": {"WATER": 0, "CA": 40000}, "scale_step_g": 0.1}]})")
                                 .string();
  const Outcome outcome = tarebowl({"solve", "-", "--larder", larder, "--explain"}, calciumOfAtLeast("4000"));
  EXPECT_EQ(outcome.status, 3);
  const json result = json::parse(outcome.out);
  ASSERT_FALSE(result["remedies"].empty());
  EXPECT_EQ(result["remedies"][0]["shortfall"], 0.0);
  ASSERT_EQ(result["explain"]["least_changes"].size(), 1U);
  EXPECT_NEAR(result["explain"]["least_changes"][0]["to"].get<double>(), 3800.0, 1e-6);  // 10 g of 380 mg
  EXPECT_FALSE(json::parse(tarebowl({"solve", "-"}, calciumOfAtLeast("4000")).out).contains("explain"));
}

TEST(Program, EndsWith2AndOneLineForALarderThatCannotBeRead) {
  const Outcome outcome = tarebowl({"solve", "-", "--larder", "no-such-file"}, calciumOfAtLeast("700"));
  EXPECT_EQ(outcome.status, 2);
  EXPECT_TRUE(isOneLine(outcome.err)) << outcome.err;
  EXPECT_THAT(outcome.err, HasSubstr("no-such-file"));
}

TEST(Program, EndsWith2AndOneLineForAFileThatCannotBeRead) {
  const std::string file = fileWith("bad.json", calciumOfAtLeast("-1")).string();
  for (const char* command : {"solve", "balance"}) {
    const Outcome outcome = tarebowl({command, file});
    EXPECT_EQ(outcome.status, 2);
    EXPECT_THAT(outcome.out, IsEmpty());
    EXPECT_EQ(outcome.err,
              "tarebowl: " + file + ": targets[0].min: expected a number of 0 or more, found -1\n");
  }
}

TEST(Program, EndsWith2AndOneLineForAFileThatIsNotThere) {
  const Outcome outcome = tarebowl({"solve", "no-such.json"});
  EXPECT_EQ(outcome.status, 2);
  EXPECT_EQ(outcome.err, "tarebowl: no-such.json: expected a readable file, found none of this name\n");
}

TEST(Program, NamesStandardInputWhereItCannotBeRead) {
  const Outcome outcome = tarebowl({"solve", "-"}, "{");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.err, StartsWith("tarebowl: standard input: expected valid JSON"));
  EXPECT_TRUE(isOneLine(outcome.err));
}

TEST(Program, EndsWith2AndOneLineForACommandLineThatCannotBeUnderstood) {
  const Outcome outcome = tarebowl({"solve", "--frobnicate"});
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.out, IsEmpty());
  EXPECT_TRUE(isOneLine(outcome.err)) << outcome.err;
}

TEST(Program, EndsWith1WhereNothingLimitsWhatIsSought) {
  const Outcome outcome = tarebowl({"solve", "-"}, R"({ "format": "tarebowl-problem/1",
    "foods": [{ "id": "limestone", "per_100_g": { "WATER": 0, "CA": 38000 } }],
    "objective": { "kind": "highest", "nutrient": "CA" } })");
  EXPECT_EQ(outcome.status, 1);
  EXPECT_EQ(json::parse(outcome.out)["status"], "unbounded");
}

TEST(Program, EndsWith1WhereTheResultCannotBeWritten) {
  if (!std::filesystem::exists("/dev/full")) GTEST_SKIP() << "no /dev/full on this system";
  const std::string file = fileWith("p.json", calciumOfAtLeast("700")).string();
  const Outcome outcome = tarebowl({"solve", file, "--table"}, "", "sh -c '\"$@\" >/dev/full' -");
  EXPECT_EQ(outcome.status, 1);
  EXPECT_EQ(outcome.err, "tarebowl: the result could not be written\n");
}

TEST(Program, PrintsATableForPeople) {
  const Outcome outcome = tarebowl({"solve", sample("tenrec-hedgehog.json"), "--table"});
  EXPECT_EQ(outcome.status, 0);
  EXPECT_THAT(outcome.out,
              AllOf(HasSubstr("INVENTED SAMPLE"), HasSubstr("● met"), HasSubstr("kcal per animal and day"),
                    HasSubstr("per 1000 kcal ME"), HasSubstr("Model species that stand in")));
  EXPECT_THAT(outcome.out,
              HasSubstr("supports, and does not replace, a qualified nutritionist and a licensed vet"));
}

TEST(Program, JudgesTheDietAsItIsWithoutSolving) {
  // 1 g of limestone as it is now holds 380 mg: 320 of 700 mg are missing.
  std::string text = calciumOfAtLeast("700");
  text.replace(text.rfind('}'), 1, R"(, "reference": { "limestone": 1 } })");
  const Outcome outcome = tarebowl({"balance", "-"}, text);
  EXPECT_EQ(outcome.status, 0);
  const json result = json::parse(outcome.out);
  EXPECT_EQ(result["grams"], json::parse(R"({ "limestone": 1, "water": 0 })"));
  EXPECT_EQ(result["status"], "compromise");
  EXPECT_EQ(result["targets"][0]["state"], "short");
  EXPECT_NEAR(result["targets"][0]["value"].get<double>(), 380.0, 1e-9);
  EXPECT_NEAR(result["targets"][0]["shortfall"].get<double>(), 320.0 / 700.0, 1e-12);
  EXPECT_THAT(tarebowl({"balance", "-", "--table"}, text).out,
              HasSubstr("The diet as it is now: not every target holds"));
}

TEST(Program, ListsTheNutrients) {
  const Outcome outcome = tarebowl({"nutrients"});
  EXPECT_EQ(outcome.status, 0);
  const json list = json::parse(outcome.out)["nutrients"];
  EXPECT_GE(list.size(), 55U);
  const auto calcium =
      std::find_if(list.begin(), list.end(), [](const json& n) { return n["tagname"] == "CA"; });
  ASSERT_NE(calcium, list.end());
  EXPECT_EQ((*calcium)["unit"], "mg");
  EXPECT_EQ((*calcium)["group"], "mineral");
  EXPECT_THAT(tarebowl({"nutrients", "--table"}).out, HasSubstr("Crude protein"));
}

TEST(Program, SaysItsVersionAndHelps) {
  const Outcome version = tarebowl({"--version"});
  EXPECT_EQ(version.status, 0);
  EXPECT_THAT(version.out, StartsWith("tarebowl "));
  const Outcome help = tarebowl({"--help"});
  EXPECT_EQ(help.status, 0);
  EXPECT_THAT(help.out, HasSubstr("balance"));
}

TEST(Program, SaysWhatIsWrongWithAFileBeforeAnyWindowOpens) {
  const std::string file = fileWith("bad.json", "{").string();
  const Outcome outcome = tarebowl({file}, "", "QT_QPA_PLATFORM=offscreen");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.err, HasSubstr(file + ": expected valid JSON"));
}

TEST(Program, WithoutADisplaySaysSoAndSolvesInTheTerminal) {
  const Outcome sampleOutcome = tarebowl({});
  EXPECT_EQ(sampleOutcome.status, 0);
  EXPECT_TRUE(isOneLine(sampleOutcome.err)) << sampleOutcome.err;
  EXPECT_THAT(sampleOutcome.err, EndsWith("tenrec-hedgehog.json in the terminal instead\n"));
  EXPECT_THAT(sampleOutcome.out, HasSubstr("INVENTED SAMPLE"));
  const std::string file = fileWith("p.json", calciumOfAtLeast("700")).string();
  const Outcome own = tarebowl({file});
  EXPECT_EQ(own.status, 0);
  EXPECT_THAT(own.out, HasSubstr("Limestone"));
}

}  // namespace
}  // namespace tarebowl::app
