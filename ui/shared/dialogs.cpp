// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/dialogs.h"

#include "ui/print/print_dialog.h"
#include "ui/shared/password_question.h"
#include "ui/shared/paths.h"
#include "ui/shared/server_dialog.h"
#include "ui/shared/set_up_dialog.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace tarebowl::ui {
namespace {

struct Ask {
  Q_DECLARE_TR_FUNCTIONS(Ask)
};

std::optional<std::filesystem::path> chosen(const QString& name) {
  if (name.isEmpty()) return std::nullopt;
  return toPath(name);
}

QString filter() {
  return Ask::tr("Problem files (*.json);;All files (*)");
}

std::optional<std::filesystem::path> askToOpen(QWidget* parent, const std::filesystem::path& start) {
  return chosen(
      QFileDialog::getOpenFileName(parent, Ask::tr("Open a problem file"), toText(start), filter()));
}

std::optional<std::filesystem::path> askToSave(QWidget* parent, const std::filesystem::path& start) {
  QString name =
      QFileDialog::getSaveFileName(parent, Ask::tr("Save the problem as"), toText(start), filter());
  if (!name.isEmpty() && !name.contains(QLatin1Char('.'))) name += QStringLiteral(".json");
  return chosen(name);
}

QString collectionFilter() {
  return Ask::tr("Collections (*.tarebowl);;All files (*)");
}

std::optional<std::filesystem::path> askForCollection(QWidget* parent, const std::filesystem::path& start) {
  return chosen(
      QFileDialog::getOpenFileName(parent, Ask::tr("Open a collection"), toText(start), collectionFilter()));
}

std::optional<std::filesystem::path> askForNewCollection(QWidget* parent,
                                                         const std::filesystem::path& start) {
  QString name =
      QFileDialog::getSaveFileName(parent, Ask::tr("A new collection"), toText(start), collectionFilter());
  if (!name.isEmpty() && !name.endsWith(QLatin1String(".tarebowl"))) name += QStringLiteral(".tarebowl");
  return chosen(name);
}

std::optional<std::filesystem::path> askForTable(QWidget* parent, const std::filesystem::path& start) {
  return chosen(QFileDialog::getOpenFileName(parent, Ask::tr("Import a table of foods"), toText(start),
                                             Ask::tr("Tables (*.csv *.tsv *.txt *.xlsx);;All files (*)")));
}

QString mappingFilter() {
  return Ask::tr("Mappings (*.json);;All files (*)");
}

std::optional<std::filesystem::path> askForMapping(QWidget* parent, const std::filesystem::path& start) {
  return chosen(
      QFileDialog::getOpenFileName(parent, Ask::tr("Load a mapping"), toText(start), mappingFilter()));
}

std::optional<std::filesystem::path> askForNewMapping(QWidget* parent, const std::filesystem::path& start) {
  QString name =
      QFileDialog::getSaveFileName(parent, Ask::tr("Save the mapping as"), toText(start), mappingFilter());
  if (!name.isEmpty() && !name.endsWith(QLatin1String(".json"))) name += QStringLiteral(".json");
  return chosen(name);
}

std::optional<std::filesystem::path> askForSheet(QWidget* parent, const std::filesystem::path& start) {
  QString name = QFileDialog::getSaveFileName(
      parent, Ask::tr("Write the diet sheet"), toText(start),
      Ask::tr("Pages (*.pdf);;Spreadsheets (*.xlsx);;Web pages (*.html);;Problem files (*.json)"));
  if (!name.isEmpty() && QFileInfo(name).suffix().isEmpty()) name += QStringLiteral(".pdf");
  return chosen(name);
}

std::optional<std::filesystem::path> askForAttachment(QWidget* parent, const std::filesystem::path& start) {
  return chosen(QFileDialog::getOpenFileName(parent, Ask::tr("A picture or report beside the collection"),
                                             toText(start), Ask::tr("All files (*)")));
}

UnsavedAnswer askAboutChanges(QWidget* parent, const QString& title) {
  QMessageBox box(QMessageBox::Question, Ask::tr("Not saved"),
                  Ask::tr("%1 has changes that are not saved.").arg(title),
                  QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, parent);
  box.setDefaultButton(QMessageBox::Save);
  switch (box.exec()) {
    case QMessageBox::Save:
      return UnsavedAnswer::Save;
    case QMessageBox::Discard:
      return UnsavedAnswer::Discard;
    default:
      return UnsavedAnswer::Stay;
  }
}

DamageAnswer askAboutDamage(QWidget* parent, const QString& why, const QString& backupOf) {
  QMessageBox box(QMessageBox::Warning, Ask::tr("The collection cannot be read"), why, QMessageBox::NoButton,
                  parent);
  box.setTextFormat(Qt::PlainText);
  const QString kept = Ask::tr("Nothing is deleted. To salvage copies what can be read into a new file.");
  box.setInformativeText(
      backupOf.isEmpty()
          ? kept
          : Ask::tr("%1 To restore puts the backup of %2 in its place, without what was written since, and "
                    "keeps the damaged file among the backups.")
                .arg(kept, backupOf));
  QPushButton* restore =
      backupOf.isEmpty() ? nullptr : box.addButton(Ask::tr("Restore the backup"), QMessageBox::AcceptRole);
  QPushButton* salvage = box.addButton(Ask::tr("Salvage what can be read…"), QMessageBox::ActionRole);
  QPushButton* leave = box.addButton(Ask::tr("Leave it"), QMessageBox::RejectRole);
  box.setDefaultButton(restore != nullptr ? restore : leave);
  box.exec();
  if (box.clickedButton() == salvage) return DamageAnswer::Salvage;
  if (restore != nullptr && box.clickedButton() == restore) return DamageAnswer::RestoreBackup;
  return DamageAnswer::Leave;
}

/// Without a loop of its own: the window goes on meanwhile, and may even be closed.
void askForPassword(QWidget* parent, PasswordQuestion& question) {
  auto* box = new QInputDialog(parent);
  box->setAttribute(Qt::WA_DeleteOnClose);
  box->setWindowTitle(Ask::tr("Password"));
  box->setLabelText(Ask::tr("The password for %1").arg(question.address()));
  box->setTextEchoMode(QLineEdit::Password);
  QObject::connect(&question, &PasswordQuestion::withdrawn, box, &QDialog::reject);
  QObject::connect(box, &QDialog::finished, &question, [box, &question](int result) {
    const bool isGiven = result == QDialog::Accepted && !box->textValue().isEmpty();
    question.answer(isGiven ? std::optional(box->textValue().toStdString()) : std::nullopt);
  });
  QObject::connect(box, &QObject::destroyed, &question, [&question] { question.answer(std::nullopt); });
  box->open();
}

std::optional<std::filesystem::path> askForServer(QWidget* parent,
                                                  const std::vector<std::filesystem::path>& remembered) {
  ServerDialog box(remembered, parent);
  if (box.exec() != QDialog::Accepted) return std::nullopt;
  return box.address();
}

bool askToSetUp(QWidget* parent, const QString& address) {
  return SetUpDialog(address, parent).exec() == QDialog::Accepted;
}

/// It may be long: what a salvage lost has a line for each table.
void tellInBox(QWidget* parent, const QString& title, const QString& text) {
  QDialog box(parent);
  box.setWindowTitle(title);
  auto* words = new QPlainTextEdit(text);
  words->setReadOnly(true);
  words->setAccessibleName(title);
  words->setTabChangesFocus(true);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok);
  QObject::connect(buttons, &QDialogButtonBox::accepted, &box, &QDialog::accept);
  auto* layout = new QVBoxLayout(&box);
  layout->addWidget(words);
  layout->addWidget(buttons);
  constexpr QSize kOnTheSmallestScreen{680, 460};
  constexpr int kAroundWords = 90;
  const QRect room{QPoint(), kOnTheSmallestScreen - QSize(60, 0)};
  const int height = words->fontMetrics().boundingRect(room, Qt::TextWordWrap, text).height();
  box.resize(kOnTheSmallestScreen.width(), std::min(kOnTheSmallestScreen.height(), height + kAroundWords));
  buttons->button(QDialogButtonBox::Ok)->setFocus();
  box.exec();
}

}  // namespace

Dialogs systemDialogs() {
  return {askToOpen,           askToSave,     askAboutChanges, askForCollection,
          askForNewCollection, askForTable,   askForMapping,   askForNewMapping,
          askForSheet,         printByDialog, askAboutDamage,  askForPassword,
          askForServer,        askToSetUp,    tellInBox,       askForAttachment};
}

}  // namespace tarebowl::ui
