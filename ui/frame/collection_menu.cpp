// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/collection_menu.h"

#include "core/store/backup.h"
#include "core/store/server_address.h"
#include "ui/collection/backup_time.h"
#include "ui/shared/language.h"
#include "ui/shared/paths.h"

#include <QActionGroup>
#include <QCoreApplication>
#include <QDir>
#include <QMenu>

#include <utility>

namespace tarebowl::ui {

CollectionMenu::CollectionMenu(QWidget* parent) : RailMenu(tr("File"), QStringLiteral("open"), parent) {
  setAccessibleName(tr("Collection file, theme and language"));
  setToolTip(tr("New, open, restore a collection; theme; language"));
  entries().addAction(tr("New collection…"), this, &CollectionMenu::newWanted);
  entries().addAction(tr("Open a collection…"), this, &CollectionMenu::openWanted);
  entries().addAction(tr("Open on a server…"), this, &CollectionMenu::serverWanted);
  openAgain_ = entries().addMenu(tr("Open again"));
  connect(openAgain_, &QMenu::aboutToShow, this, &CollectionMenu::fillRecent);
  entries().addAction(tr("Open the invented sample"), this, &CollectionMenu::sampleWanted);
  entries().addSeparator();
  backups_ = entries().addMenu(tr("Restore a backup"));
  connect(backups_, &QMenu::aboutToShow, this, &CollectionMenu::fillBackups);
  QMenu* themes = entries().addMenu(tr("Theme"));
  for (const auto& [name, choice] :
       {std::pair{tr("As the desktop"), ThemeChoice::System}, std::pair{tr("Light"), ThemeChoice::Light},
        std::pair{tr("Dark"), ThemeChoice::Dark}})
    themes->addAction(name, this, [this, choice = choice] { emit themeWanted(choice); });
  languages_ = entries().addMenu(tr("Language, from the next start on"));
  auto* one = new QActionGroup(languages_);
  const auto addLanguage = [this, one](const QString& name, const QString& code) {
    QAction* action = languages_->addAction(name, this, [this, code] { emit languageWanted(code); });
    action->setCheckable(true);
    action->setData(code);
    one->addAction(action);
  };
  addLanguage(tr("As the system"), {});
  for (const Language& language : languages())
    addLanguage(QString::fromUtf8(language.name), QLatin1String(language.code));
}

void CollectionMenu::setLanguage(const QString& code) {
  for (QAction* action : languages_->actions()) action->setChecked(action->data().toString() == code);
}

void CollectionMenu::fillRecent() {
  openAgain_->clear();
  for (const std::filesystem::path& file : recent_ ? recent_() : std::vector<std::filesystem::path>()) {
    std::error_code ignored;
    const bool isThere = std::filesystem::is_regular_file(file, ignored);
    if (store::isServerAddress(file)) {
      openAgain_->addAction(toText(file), this, [this, file = toText(file)] { emit recentWanted(file); })
          ->setEnabled(file != file_);
      continue;
    }
    const QString where = QDir::toNativeSeparators(toText(file.parent_path()));
    QAction* action =
        openAgain_->addAction(isThere ? tr("%1 – in %2").arg(toText(file.stem()), where)
                                      : tr("%1 – not in %2 any more").arg(toText(file.stem()), where),
                              this, [this, file = toText(file)] { emit recentWanted(file); });
    action->setEnabled(isThere && file != file_);
  }
  if (openAgain_->isEmpty()) openAgain_->addAction(tr("None was open yet"))->setEnabled(false);
}

void CollectionMenu::fillBackups() {
  backups_->clear();
  const auto backups = file_.empty() ? std::vector<store::Backup>() : store::listBackups(file_);
  for (const store::Backup& backup : backups)
    backups_->addAction(tr("%1 (%2)").arg(backupTimeText(backup.at),
                                          QCoreApplication::translate("Store", backup.reason.c_str())),
                        this, [this, file = toText(backup.file)] { emit restoreWanted(file); });
  if (!backups.empty()) return;
  backups_->addAction(tr("There is none yet: one is made every day"))->setEnabled(false);
}

}  // namespace tarebowl::ui
