// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/import_desk.h"

#include "core/exchange/problem_json.h"
#include "ui/collection/collection_state.h"
#include "ui/shared/paths.h"

#include <QCryptographicHash>
#include <QFile>

#include <fstream>
#include <iterator>
#include <utility>

namespace tarebowl::ui {
namespace {

exchange::TableMapping mappingIn(const std::filesystem::path& file) {
  std::ifstream stream(file, std::ios::binary);
  if (!stream)
    throw exchange::FormatError(file.string(), "", "a readable mapping (tarebowl-mapping/1), found none");
  return exchange::parseMapping(std::string(std::istreambuf_iterator<char>(stream), {}), file.string());
}

/// By which it is seen that a table is still the one that was imported; empty where it cannot be read.
QByteArray markOf(const std::filesystem::path& table) {
  QFile file(toText(table));
  if (!file.open(QIODevice::ReadOnly)) return {};
  QCryptographicHash hash(QCryptographicHash::Sha256);
  hash.addData(&file);
  return hash.result();
}

}  // namespace

ImportDesk::ImportDesk(OpenCollection& collection, FoodDesk& foods, QObject* parent)
    : QObject(parent),
      collection_(collection),
      foods_(foods),
      lines_(std::make_shared<exchange::PlanLines>()) {
  connect(&errand_, &Errand::progressed, this, &ImportDesk::progressed);
  connect(&errand_, &Errand::failed, this, &ImportDesk::complainOf);
  connect(&foods_, &FoodDesk::listChanged, this, [this] {
    if (std::exchange(waitsForFoods_, false)) plan();
  });
}

void ImportDesk::openTable(const std::filesystem::path& file) {
  file_ = file;
  read({}, std::nullopt);
}

void ImportDesk::readAs(const exchange::KnownOfTable& known) {
  read(known, std::nullopt);
}

void ImportDesk::loadMapping(const std::filesystem::path& file) {
  read({}, file);
}

void ImportDesk::read(const exchange::KnownOfTable& known, std::optional<std::filesystem::path> mapping) {
  plan_.reset();
  lines_ = std::make_shared<exchange::PlanLines>();
  setStage(Stage::Reading);
  errand_.run(
      [file = file_, known, mapping = std::move(mapping)](const Errand::Terms& /*terms*/) {
        const exchange::TableInput table = exchange::tableFile(file);
        Opened opened;
        opened.guess =
            mapping ? exchange::MappingGuess{mappingIn(*mapping), {}} : exchange::guessMapping(table, known);
        opened.columns = exchange::columnExamples(table, opened.guess.mapping);
        return opened;
      },
      [this](Opened opened) { takeOpened(std::move(opened)); });
}

void ImportDesk::takeOpened(Opened opened) {
  // By this name the table's foods are found again; the person may give a better one.
  if (opened.guess.mapping.source.empty()) opened.guess.mapping.source = toText(file_.stem()).toStdString();
  mapping_ = std::move(opened.guess.mapping);
  notes_ = std::move(opened.guess.notes);
  columns_ = std::move(opened.columns);
  emit mappingChanged();
  plan();
}

void ImportDesk::setMapping(exchange::TableMapping mapping) {
  if (stage_ == Stage::Importing || mapping == mapping_) return;
  mapping_ = std::move(mapping);
  emit mappingChanged();
  plan();
}

void ImportDesk::saveMapping(const std::filesystem::path& file) {
  std::ofstream stream(file, std::ios::binary);
  stream << exchange::writeMapping(mapping_);
  stream.close();
  if (!stream) {
    complaint_ = tr("The mapping could not be written to %1.").arg(toText(file));
    emit stageChanged();
  }
}

ImportDesk::Run ImportDesk::runThrough(transfer::Keep keep) const {
  return [file = file_, mapping = mapping_, collection = *collection_.file(), author = collection_.author(),
          keep](const Errand::Terms& terms) {
    const QByteArray mark = keep == transfer::Keep::Nothing ? QByteArray() : markOf(file);
    auto lines = std::make_shared<exchange::PlanLines>();
    exchange::ImportOptions options{.stop = terms.stop, .progress = terms.progress};
    options.onFood = [&](const exchange::PlannedFood& food) { lines->add(food); };
    options.onRemark = [&](exchange::ImportIssue issue, const exchange::Remark& remark) {
      lines->add(issue, remark);
    };
    store::Collection into =
        store::Collection::open(collection.file, author.at, {.password = collection.password});
    transfer::Imported imported = transfer::importTable(
        into, {.input = exchange::tableFile(file), .mapping = mapping, .file = file}, author, keep, options);
    lines->finish();
    return Planned{std::move(imported.plan), std::move(lines), imported.change, mark};
  };
}

ImportAgain ImportDesk::importAgain(const QByteArray& mark) const {
  return
      [file = file_, mapping = mapping_, mark](store::Collection& collection, const store::Author& author) {
        const auto refuse = [&](const QString& why) {
          throw store::StoreError(store::StoreErrorCode::Refused, file, why.toStdString());
        };
        if (markOf(file) != mark)
          refuse(tr(
              "it is another table now than the one that was imported; import it again to see what it would "
              "do"));
        const transfer::Imported imported = transfer::importTable(
            collection, {.input = exchange::tableFile(file), .mapping = mapping, .file = file}, author,
            transfer::Keep::WhereItMay);
        if (!imported.change) refuse(tr("importing it again would change nothing"));
        return imported.change.value_or(0);
      };
}

void ImportDesk::plan() {
  waitsForFoods_ = foods_.isReading();  // a new collection is not on the disk before
  if (waitsForFoods_) return setStage(Stage::Planning);
  if (!collection_.file()) return fail(tr("No collection is open that it could go into."));
  if (collection_.isReadOnly()) return fail(readOnlyText());
  if (!mapping_.decimalMark)
    return fail(
        tr("Its numbers can be read both ways, with a decimal point and with a decimal comma. Say "
           "which it is."));
  setStage(Stage::Planning);
  errand_.run(runThrough(transfer::Keep::Nothing), [this](Planned planned) {
    plan_ = std::move(planned.plan);
    lines_ = std::move(planned.lines);
    setStage(Stage::Planned);
  });
}

bool ImportDesk::mayImport() const {
  return stage_ == Stage::Planned && plan_ && plan_->mayBeWritten() &&
         plan_->valuesNew + plan_->valuesChanged > 0;
}

void ImportDesk::import() {
  if (!mayImport()) return;
  setStage(Stage::Importing);
  errand_.run(runThrough(transfer::Keep::WhereItMay),
              [this](Planned imported) { takeImported(std::move(imported)); });
}

void ImportDesk::takeImported(Planned imported) {
  if (imported.plan.stopped) {
    setStage(Stage::Planned);
    complaint_ = tr("Stopped. Nothing was written.");
    emit stageChanged();
    return;
  }
  plan_ = std::move(imported.plan);
  lines_ = std::move(imported.lines);
  if (!imported.change) return setStage(Stage::Planned);  // the table is another by now: look again
  foods_.takeImport({.change = *imported.change,
                     .what = tr("import %1").arg(toText(file_.filename())),
                     .again = importAgain(imported.mark)});
  setStage(Stage::Imported);
}

void ImportDesk::cancel() {
  if (!errand_.isBusy() && !waitsForFoods_) return;
  // An import may be past the point where it could still be stopped: wait for what it came to.
  if (stage_ == Stage::Importing) return errand_.stop();
  fail(tr("Stopped before it was read through. Nothing was written."));
}

void ImportDesk::close() {
  waitsForFoods_ = false;
  errand_.cancel();
  plan_.reset();
  lines_ = std::make_shared<exchange::PlanLines>();
  setStage(Stage::Nothing);
}

void ImportDesk::setStage(Stage stage) {
  stage_ = stage;
  complaint_.clear();
  emit stageChanged();
}

void ImportDesk::fail(const QString& complaint) {
  waitsForFoods_ = false;
  errand_.cancel();
  plan_.reset();
  lines_ = std::make_shared<exchange::PlanLines>();
  stage_ = Stage::Failed;
  complaint_ = complaint;
  emit stageChanged();
}

void ImportDesk::complainOf(const std::exception_ptr& error) {
  try {
    std::rethrow_exception(error);
  } catch (const exchange::FormatError& wrong) {
    const QString where = QString::fromStdString(wrong.keyPath());
    const QString what = tr("expected %1").arg(QString::fromStdString(wrong.expected()));
    fail(where.isEmpty() ? tr("The table cannot be read: %1.").arg(what)
                         : tr("The table cannot be read so. %1: %2.").arg(where, what));
  } catch (const std::exception& wrong) {
    fail(refusalOf(wrong).why);
  }
}

}  // namespace tarebowl::ui
