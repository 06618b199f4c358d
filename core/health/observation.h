// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/health/blood.h"
#include "core/health/faecal_scale.h"
#include "core/quantity/date.h"

#include <optional>
#include <string>
#include <vector>

/// What people see of an animal's health, beside its body mass and condition, which have readings of their
/// own (animal/body_mass.h, animal/condition_score.h).
namespace tarebowl::health {

enum class SignKind { Faeces, Appetite, Vomiting, Limping, Fracture, Blood, Treatment, Other };

enum class Appetite { None, Poor, Reduced, Usual, Keen };

/// A picture or report that lies beside the collection: "reports/2026-11-03 radiograph.pdf", a path relative
/// to the collection's folder that cannot lead out of it. The file itself is not kept in the collection.
struct Attachment {
  std::string path{};
  std::string words{};
  bool operator==(const Attachment&) const = default;
};
/// With / between folders; nothing that begins at a root or a drive, no "..", no empty part.
[[nodiscard]] bool staysInside(const std::string& path);

/// One thing seen on a day, of one animal or of a group as a whole: exactly one is named, by its code.
struct Observation {
  std::optional<std::string> individual{};
  std::optional<std::string> group{};
  quantity::Date on{};
  std::string time{};  ///< "08:07"; empty where nobody said
  SignKind kind = SignKind::Other;
  std::optional<FaecalScore> faeces{};
  std::optional<Appetite> appetite{};
  std::vector<BloodValue> blood{};
  std::string note{};
  std::vector<Attachment> attachments{};
  std::string who{};
  bool operator==(const Observation&) const = default;
};

enum class ObservationProblem {
  NotOneSubject,
  BadTime,
  NothingSaid,   ///< of faeces without a score, of appetite without a word, a treatment or other without a
                 ///< note
  OfAnotherKind  ///< a score with a limp, a blood value with faeces
};
[[nodiscard]] std::optional<ObservationProblem> problemWith(const Observation& observation);

/// Minutes after midnight; nothing where no time was said.
[[nodiscard]] std::optional<int> minuteOf(const Observation& observation);

/// Whether it is a sign: something that a look-back starts from. Soft faeces, an appetite below usual,
/// vomiting, limping and fractures are; a formed stool, a blood value or a treatment is not.
[[nodiscard]] bool isSign(const Observation& observation);

}  // namespace tarebowl::health
