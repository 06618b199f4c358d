// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/faeces_verbs.h"
#include "core/transfer/study_planning.h"
#include "ui/intake/intake_desk.h"

#include <QObject>

#include <optional>
#include <variant>
#include <vector>

namespace tarebowl::ui {

/// The plan of a study of the group that the room shows, and the faeces that were collected of it. No widget,
/// and nothing here waits for the disk.
class StudyDesk : public QObject {
  Q_OBJECT
 public:
  StudyDesk(IntakeDesk& intake, OpenCollection& collection, IntakeDesk::Clock today,
            QObject* parent = nullptr);

  using Answer = std::variant<exchange::StudyPlanToWrite, transfer::NoStudyPlan>;
  /// Nothing before it is worked out, or where no group is shown.
  [[nodiscard]] const std::optional<Answer>& answer() const { return answer_; }
  [[nodiscard]] const exchange::StudyPlanToWrite* plan() const;
  [[nodiscard]] const std::vector<store::StoredFaeces>& faeces() const { return faeces_; }
  [[nodiscard]] QDate tomorrow() const;
  [[nodiscard]] IntakeDesk& intake() const { return intake_; }
  [[nodiscard]] OpenCollection& collection() const { return collection_; }

  /// Whose study is that of the group shown, whatever `asked` names.
  void workOut(transfer::StudyAsked asked);
  void keep(intake::FaecesCollected faeces);
  void takeOut(const store::StoredFaeces& faeces);

 signals:
  void answered();
  void faecesChanged();
  /// Faeces were written: a form may be emptied.
  void kept();

 private:
  void showGroup();
  void readFaeces();

  IntakeDesk& intake_;
  OpenCollection& collection_;
  IntakeDesk::Clock today_;
  std::string shown_;
  std::optional<transfer::StudyAsked> asked_;
  std::optional<Answer> answer_;
  std::vector<store::StoredFaeces> faeces_;
};

}  // namespace tarebowl::ui
