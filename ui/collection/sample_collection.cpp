// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/sample_collection.h"

#include "core/exchange/problem_foods.h"
#include "core/exchange/problem_json.h"
#include "core/store/verbs.h"
#include "core/transfer/herd_import.h"
#include "ui/shared/paths.h"

#include <QFile>
#include <QStandardPaths>
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

void addReports(std::vector<exchange::ProblemFood>& foods, const std::filesystem::path& table) {
  QFile file(toText(table));
  if (!file.open(QIODevice::ReadOnly)) return;
  QTextStream lines(&file);
  lines.readLine();  // the header
  for (QString line = lines.readLine(); !line.isNull(); line = lines.readLine()) {
    const QStringList fields = fieldsOf(line);
    if (fields.size() != FieldCount) continue;
    const auto food = std::find_if(foods.begin(), foods.end(), [&](const exchange::ProblemFood& known) {
      return known.food.code == fields[Food].toStdString();
    });
    const auto value = valueOf(fields);
    if (food == foods.end() || !value) continue;
    const std::string code = fields[Report].toStdString();
    auto sample = std::find_if(food->samples.begin(), food->samples.end(),
                               [&](const food::Sample& known) { return known.sourceCode == code; });
    if (sample == food->samples.end()) sample = food->samples.insert(food->samples.end(), sampleOf(fields));
    sample->values.push_back(*value);
  }
}

void fill(store::Collection& collection, const std::filesystem::path& folder, const store::Author& author) {
  const std::vector<diet::BalanceProblem> problems = problemsOf(folder);
  std::vector<exchange::ProblemFood> foods = exchange::foodsOf(problems);
  addReports(foods, folder / "laboratory.csv");
  for (const exchange::ProblemFood& food : foods) {
    const store::FoodId id{store::addFood(collection, {.food = food.food}, author).id};
    for (const food::Sample& sample : food.samples) store::addSample(collection, id, sample, author);
  }
  transfer::importHerd(collection, folder / "herd", author);
}

}  // namespace

store::Collection openOrMakeSample(const std::filesystem::path& file, const std::filesystem::path& folder,
                                   const std::string& at) {
  if (std::filesystem::exists(file))
    return store::Collection::open(file, at, {.access = store::OpenOptions::Access::AsAllowed});
  std::filesystem::create_directories(file.parent_path());
  // Made beside its place and moved there: a sample that was made by half is never opened.
  std::filesystem::path half = file;
  half += ".new";
  for (const char* part : {"", "-wal", "-shm"}) std::filesystem::remove(half.string() + part);
  const store::Author author{.who = "Tarebowl", .at = at};
  {
    store::Collection collection = store::Collection::create(half, author);
    fill(collection, folder, author);
  }
  std::filesystem::rename(half, file);
  return store::Collection::open(file, at);
}

std::filesystem::path sampleCollection() {
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation);
  return toPath(folder) / "brackenmere.tarebowl";
}

}  // namespace tarebowl::ui
