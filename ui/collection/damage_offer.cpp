// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/collection/damage_offer.h"

#include "core/store/backup.h"
#include "ui/collection/backup_time.h"
#include "ui/shared/decimal_text.h"
#include "ui/shared/paths.h"

#include <QLocale>
#include <QStringList>
#include <QWidget>

#include <memory>
#include <utility>

namespace tarebowl::ui {
namespace {

/// "feeding line": 3 rows could not be read, 2 lay beside them.
QString lossOf(const store::SalvagedTable& table) {
  QStringList parts;
  if (table.unreadable > 0)
    parts << DamageOffer::tr("%n row(s) or page(s) could not be read", nullptr,
                             static_cast<int>(table.unreadable));
  if (table.leftOut > 0)
    parts << DamageOffer::tr("%n row(s) left out, what they belong to is lost", nullptr,
                             static_cast<int>(table.leftOut));
  if (table.doubtful > 0)
    parts << DamageOffer::tr("%n saved row(s) lay beside damaged ones: look at them", nullptr,
                             static_cast<int>(table.doubtful));
  if (table.whereUnknown) parts << DamageOffer::tr("its place is lost, there may have been more");
  const QString name = QString::fromStdString(table.name).replace(QLatin1Char('_'), QLatin1Char(' '));
  return DamageOffer::tr("%1: %2").arg(name, parts.join(QStringLiteral("; ")));
}

/// When the copy was made; its name where that does not tell.
QString timeOf(const std::filesystem::path& file, const std::optional<std::filesystem::path>& copy) {
  if (!copy) return {};
  for (const store::Backup& backup : store::listBackups(file))
    if (backup.file == *copy) return backupTimeText(backup.at);
  return toText(copy->filename());
}

}  // namespace

DamageOffer::DamageOffer(OpenCollection& collection, Dialogs dialogs, QWidget* window)
    : QObject(window), collection_(collection), dialogs_(std::move(dialogs)), window_(window) {
  // The rooms hear of it first; the question comes when they have said what is the matter.
  connect(&collection_, &OpenCollection::refused, this, [this](const Refusal& refusal) {
    if (!refusal.isDamaged || !collection_.file()) return;
    QMetaObject::invokeMethod(
        this, [this, file = collection_.file()->file, refusal] { offer(file, refusal); },
        Qt::QueuedConnection);
  });
}

void DamageOffer::offer(const std::filesystem::path& file, const Refusal& refusal) {
  if (!dialogs_.damagedCollection) return;
  switch (dialogs_.damagedCollection(window_, refusal.why, timeOf(file, refusal.backup))) {
    case DamageAnswer::RestoreBackup:
      if (refusal.backup) restore(file, *refusal.backup);
      return;
    case DamageAnswer::Salvage:
      return salvage(file);
    case DamageAnswer::Leave:
      return;
  }
}

void DamageOffer::restore(const std::filesystem::path& file, const std::filesystem::path& backup) {
  const store::Author author = collection_.author();
  collection_.open({.name = toText(file.stem()), .file = file}, [=] {
    store::restore(file, backup, author);
    return store::Collection::open(file, author.at);
  });
}

void DamageOffer::salvage(const std::filesystem::path& file) {
  if (!dialogs_.collectionToCreate) return;
  const auto fresh = dialogs_.collectionToCreate(window_, file.parent_path());
  if (!fresh) return;
  const store::Author author = collection_.author();
  const auto report = std::make_shared<store::SalvageReport>();
  collection_.open({.name = toText(fresh->stem()), .file = *fresh}, [=, fresh = *fresh] {
    *report = store::salvage(file, fresh, author);
    return store::Collection::open(fresh, author.at);
  });
  collection_.ask([report](store::Collection& /*collection*/) { return *report; },
                  [this](const store::SalvageReport& salvaged) {
                    if (dialogs_.tell) dialogs_.tell(window_, tr("What was salvaged"), salvageText(salvaged));
                  });
}

QString salvageText(const store::SalvageReport& report) {
  std::size_t saved = 0;
  QStringList losses;
  for (const store::SalvagedTable& table : report.tables) {
    saved += table.saved;
    if (!table.isWhole()) losses << lossOf(table);
  }
  if (report.newestWritesLost) losses << DamageOffer::tr("What was written last could not be read.");
  if (report.pagesWithoutTable > 0)
    losses << DamageOffer::tr("%n page(s) could not be told to any table", nullptr,
                              static_cast<int>(report.pagesWithoutTable));
  const QString first =
      DamageOffer::tr("%1 rows were copied into the new collection; the damaged file is as it was.")
          .arg(countText(static_cast<std::int64_t>(saved)));
  if (losses.isEmpty())
    return first + QLatin1Char('\n') + DamageOffer::tr("Nothing is missing, as far as can be told.");
  return first + QLatin1Char('\n') + losses.join(QLatin1Char('\n'));
}

}  // namespace tarebowl::ui
