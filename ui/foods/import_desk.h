// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/mapping_guess.h"
#include "core/exchange/plan_lines.h"
#include "core/exchange/table_examples.h"
#include "core/transfer/table_import.h"
#include "ui/foods/food_desk.h"
#include "ui/shared/errand.h"

#include <QByteArray>

#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

namespace tarebowl::ui {

/// A table of foods on its way into the collection: how it is read, what would become of each of its lines,
/// and the import itself. No widget, and nothing here waits for the disk.
class ImportDesk : public QObject {
  Q_OBJECT
 public:
  enum class Stage {
    Nothing,    ///< no table was chosen
    Reading,    ///< its head is read and its mapping guessed
    Planning,   ///< it is read through; nothing is kept
    Planned,    ///< what would happen is known
    Importing,  ///< it is read into the collection
    Imported,
    Failed  ///< it cannot be read so: see complaint()
  };

  ImportDesk(OpenCollection& collection, FoodDesk& foods, QObject* parent = nullptr);

  void openTable(const std::filesystem::path& file);
  /// Reads the mapping from a file, or writes it to one.
  void loadMapping(const std::filesystem::path& file);
  void saveMapping(const std::filesystem::path& file);
  /// The mapping as a hand has changed it; plans anew at once.
  void setMapping(exchange::TableMapping mapping);
  /// Another form or header line: the columns are other columns, so that the mapping is guessed again.
  void readAs(const exchange::KnownOfTable& known);
  void plan();
  void import();
  /// Stops what runs. An import that is stopped has written nothing.
  void cancel();
  void close();

  [[nodiscard]] Stage stage() const { return stage_; }
  [[nodiscard]] const std::filesystem::path& file() const { return file_; }
  [[nodiscard]] const exchange::TableMapping& mapping() const { return mapping_; }
  [[nodiscard]] const std::vector<exchange::ColumnExamples>& columns() const { return columns_; }
  [[nodiscard]] const std::vector<exchange::GuessNote>& notes() const { return notes_; }
  /// Of the last plan or import; nothing before the first.
  [[nodiscard]] const std::optional<exchange::ImportPlan>& planned() const { return plan_; }
  [[nodiscard]] const std::shared_ptr<const exchange::PlanLines>& lines() const { return lines_; }
  /// What is in the way, with its place in the table; empty where nothing is.
  [[nodiscard]] const QString& complaint() const { return complaint_; }
  [[nodiscard]] bool mayImport() const;

 signals:
  /// The columns or how they are read.
  void mappingChanged();
  void stageChanged();
  void progressed(double share);

 private:
  struct Opened {
    exchange::MappingGuess guess;
    std::vector<exchange::ColumnExamples> columns;
  };
  struct Planned {
    exchange::ImportPlan plan;
    std::shared_ptr<const exchange::PlanLines> lines;
    std::optional<std::int64_t> change;
    QByteArray mark;  ///< of the table's content; empty for a plan
  };
  /// Reads the table into the collection on the errand's thread.
  using Run = std::function<Planned(const Errand::Terms&)>;
  [[nodiscard]] Run runThrough(transfer::Keep keep) const;
  [[nodiscard]] ImportAgain importAgain(const QByteArray& mark) const;
  void read(const exchange::KnownOfTable& known, std::optional<std::filesystem::path> mapping);
  void takeOpened(Opened opened);
  void takeImported(Planned imported);
  void setStage(Stage stage);
  void fail(const QString& complaint);
  void complainOf(const std::exception_ptr& error);

  OpenCollection& collection_;
  FoodDesk& foods_;
  Stage stage_ = Stage::Nothing;
  std::filesystem::path file_;
  exchange::TableMapping mapping_;
  std::vector<exchange::ColumnExamples> columns_;
  std::vector<exchange::GuessNote> notes_;
  std::optional<exchange::ImportPlan> plan_;
  std::shared_ptr<const exchange::PlanLines> lines_;
  QString complaint_;
  bool waitsForFoods_ = false;
  Errand errand_;
};

}  // namespace tarebowl::ui
