// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/options.h"
#include "core/transfer/health_pages.h"

#include <optional>
#include <string>

/// What the commands of health are about, and where they write. Each throws UsageError.
namespace tarebowl::app {

/// One of both.
struct SubjectWords {
  std::string group{};
  std::string animal{};  ///< code of an individual
};

struct PeriodWords {
  std::optional<quantity::Date> from{};
  std::optional<quantity::Date> to{};
};

/// How a period is told where it is not named.
struct PeriodHelp {
  const char* from;
  const char* to;
};

void addAnimal(CLI::App& command, SubjectWords& words);
void addPeriod(CLI::App& command, PeriodWords& words, const PeriodHelp& help);
/// FILE, a page to write.
void addPage(CLI::App& command, std::string& file);

[[nodiscard]] transfer::HealthSubject subjectOf(const SubjectWords& words);

/// What is known of the subject in the period: where it is not named, so many days up to the last.
[[nodiscard]] transfer::HealthPeriod readPeriod(const store::Collection& collection,
                                                const transfer::HealthSubject& subject,
                                                const PeriodWords& words, quantity::Date last, int days);

/// An answer in each form.
struct HealthAnswer {
  std::string json;
  std::string table;
  std::string page;
};

/// The page where there is a file for it, or else the table or JSON.
int give(const HealthAnswer& answer, const std::string& file, bool asTable, const Streams& streams);

}  // namespace tarebowl::app
