// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/problem_files.h"

#include "core/exchange/problem_json.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QSaveFile>
#include <QStringList>

#include <algorithm>
#include <fstream>
#include <string>
#include <system_error>

namespace tarebowl::ui {
namespace {

struct Files {
  Q_DECLARE_TR_FUNCTIONS(Files)
};

/// Whether the file calls itself a problem; results and other JSON lie in the same folders.
bool namesTheFormat(const std::filesystem::path& file) {
  constexpr std::size_t kHead = 4096;
  std::ifstream stream(file, std::ios::binary);
  std::string head(kHead, '\0');
  stream.read(head.data(), static_cast<std::streamsize>(head.size()));
  head.resize(static_cast<std::size_t>(stream.gcount()));
  return head.find("tarebowl-problem/") != std::string::npos;
}

ProblemEntry readEntry(const std::filesystem::path& file) {
  try {
    return entryOf(file, exchange::readProblem(file));
  } catch (const exchange::FormatError& error) {
    const QString where =
        QString::fromStdString(error.keyPath().empty() ? error.expected() : error.keyPath());
    return {file, toText(file.filename()), Files::tr("cannot be read: %1").arg(where), false};
  }
}

}  // namespace

std::vector<ProblemEntry> problemsIn(const std::filesystem::path& folder) {
  std::vector<ProblemEntry> entries;
  std::error_code error;
  for (std::filesystem::directory_iterator it(folder, error), end; !error && it != end; it.increment(error)) {
    const std::filesystem::path& file = it->path();
    if (file.extension() == ".json" && it->is_regular_file(error) && namesTheFormat(file))
      entries.push_back(readEntry(file));
  }
  std::sort(entries.begin(), entries.end(),
            [](const auto& a, const auto& b) { return QString::localeAwareCompare(a.title, b.title) < 0; });
  return entries;
}

ProblemEntry entryOf(const std::filesystem::path& file, const diet::BalanceProblem& problem) {
  ProblemEntry entry{file, QString::fromStdString(problem.title), {}, true};
  if (entry.title.isEmpty()) entry.title = toText(file.stem());
  QStringList parts{animalsText(problem)};
  QStringList models = modelSpecies(problem);
  // "domestic dog (Canis familiaris), adult maintenance" is for the page; the list says "domestic dog".
  static const QRegularExpression kDetail(QStringLiteral("\\s*[(,].*$"));
  models.replaceInStrings(kDetail, QString());
  models.removeDuplicates();
  if (!models.isEmpty()) parts << Files::tr("model: %1").arg(models.join(QStringLiteral(", ")));
  entry.subtitle = parts.join(QStringLiteral(" · "));
  return entry;
}

std::optional<QString> saveProblem(const std::filesystem::path& file, const diet::BalanceProblem& problem) {
  QSaveFile out(toText(file));
  const std::string text = exchange::writeProblem(problem);
  if (!out.open(QIODevice::WriteOnly) || out.write(text.data(), static_cast<qint64>(text.size())) < 0 ||
      !out.commit())
    return Files::tr("%1 was not saved: %2").arg(toText(file), out.errorString());
  return std::nullopt;
}

QString animalsText(const diet::BalanceProblem& problem) {
  const int count = problem.eater.count;
  return count == 1 ? Files::tr("1 animal") : Files::tr("%1 animals").arg(count);
}

QStringList modelSpecies(const diet::BalanceProblem& problem) {
  QStringList models;
  const auto add = [&](const auto& targets) {
    for (const auto& target : targets) models << QString::fromStdString(target.origin.modelSpecies);
  };
  add(problem.targets);
  add(problem.ratios);
  add(problem.shares);
  models.removeAll(QString());
  models.removeDuplicates();
  return models;
}

}  // namespace tarebowl::ui
