// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/sample_foods.h"

#include "core/exchange/problem_foods.h"
#include "core/exchange/problem_json.h"

#include <QFile>
#include <QStringList>
#include <QTextStream>

#include <algorithm>

namespace tarebowl::ui {
namespace {

/// The columns of laboratory.csv.
enum Field {
  Food,
  Report,
  Date,
  Laboratory,
  Method,
  Batch,
  Tagname,
  Per100g,
  Unit,
  Count,
  SetAside,
  FieldCount
};

QStringList fieldsOf(const QString& line) {
  QStringList fields{QString()};
  bool quoted = false;
  for (const QChar c : line) {
    if (c == QLatin1Char('"'))
      quoted = !quoted;
    else if (c == QLatin1Char(',') && !quoted)
      fields << QString();
    else
      fields.back() += c;
  }
  return fields;
}

std::vector<diet::BalanceProblem> problemsOf(const std::filesystem::path& folder) {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder))
    if (entry.path().extension() == ".json") files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  std::vector<diet::BalanceProblem> problems;
  problems.reserve(files.size());
  for (const auto& file : files) problems.push_back(exchange::readProblem(file));
  return problems;
}

food::Sample sampleOf(const QStringList& fields) {
  food::Sample sample{
      .origin = food::SampleOrigin::OwnLab,
      .source = QStringLiteral("Report %1 (invented)").arg(fields[Report]).toStdString(),
      .sourceCode = fields[Report].toStdString(),
      .date = quantity::parseDate(fields[Date].toStdString()),
      .lab = fields[Laboratory].toStdString(),
      .method = fields[Method].toStdString(),
      .batch = fields[Batch].toStdString(),
  };
  if (!fields[SetAside].isEmpty()) sample.excluded = fields[SetAside].toStdString();
  return sample;
}

std::optional<food::SampleValue> valueOf(const QStringList& fields) {
  const auto nutrient = food::findByTagname(fields[Tagname].toStdString());
  const auto unit = quantity::parseUnit(fields[Unit].toStdString());
  if (!nutrient || !unit) return std::nullopt;
  const auto read = food::toSampleValue(
      *nutrient, {.amount = fields[Per100g].toDouble(), .unit = *unit, .sampleCount = fields[Count].toInt()});
  if (const auto* value = std::get_if<food::SampleValue>(&read)) return *value;
  return std::nullopt;
}

void addReports(std::vector<FoodPage>& pages, const std::filesystem::path& table) {
  QFile file(QString::fromStdU16String(table.generic_u16string()));
  if (!file.open(QIODevice::ReadOnly)) return;
  QTextStream lines(&file);
  lines.readLine();  // the header
  for (QString line = lines.readLine(); !line.isNull(); line = lines.readLine()) {
    const QStringList fields = fieldsOf(line);
    if (fields.size() != FieldCount) continue;
    const auto page = std::find_if(pages.begin(), pages.end(), [&](const FoodPage& known) {
      return known.food.code == fields[Food].toStdString();
    });
    const auto value = valueOf(fields);
    if (page == pages.end() || !value) continue;
    const std::string code = fields[Report].toStdString();
    auto sample = std::find_if(page->samples.begin(), page->samples.end(),
                               [&](const KeptSample& kept) { return kept.sample.sourceCode == code; });
    if (sample == page->samples.end())
      sample = page->samples.insert(page->samples.end(), KeptSample{{}, sampleOf(fields)});
    sample->sample.values.push_back(*value);
  }
}

}  // namespace

std::vector<FoodPage> sampleFoods(const std::filesystem::path& folder) {
  const std::vector<diet::BalanceProblem> problems = problemsOf(folder);
  std::vector<FoodPage> pages;
  for (exchange::ProblemFood& food : exchange::foodsOf(problems)) {
    FoodPage page{.food = std::move(food.food)};
    for (food::Sample& sample : food.samples) page.samples.push_back({{}, std::move(sample)});
    pages.push_back(std::move(page));
  }
  addReports(pages, folder / "laboratory.csv");
  return pages;
}

}  // namespace tarebowl::ui
