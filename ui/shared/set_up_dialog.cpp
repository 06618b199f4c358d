// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/set_up_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace tarebowl::ui {
namespace {

constexpr int kWidth = 620;

QLabel* words(const QString& text) {
  auto* label = new QLabel(text);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  return label;
}

}  // namespace

SetUpDialog::SetUpDialog(const QString& address, QWidget* parent) : QDialog(parent) {
  setWindowTitle(tr("Set up a collection on the server"));
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(
      words(tr("The database at %1 holds no collection yet. One can be set up in it: empty, with the "
               "tables it needs and with roles, by which the database itself holds people to what they "
               "may do.")
                .arg(address)));
  auto* roles = new QFormLayout;
  // As server/rights.sql has them.
  roles->addRow(tr("reader"), words(tr("reads everything, writes nothing")));
  roles->addRow(tr("keeper"),
                words(tr("weighs in and out, swaps foods, weighs animals, notes what is seen")));
  roles->addRow(tr("vet"), words(tr("animals and their masses, observations, blood and faeces")));
  roles->addRow(tr("nutritionist"),
                words(tr("foods, targets, diets and their approval, and all that the kitchen does")));
  roles->addRow(tr("curator"), words(tr("animals and groups, decisions on diets and swaps")));
  layout->addLayout(roles);
  layout->addWidget(
      words(tr("You, who set it up, own it and may do everything. Nobody else may open it until you let "
               "them in. What stands in the database beside it is left alone.")));
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  QPushButton* setUp = buttons->addButton(tr("Set up the collection here"), QDialogButtonBox::AcceptRole);
  setUp->setToolTip(tr("Makes tables and roles in the database, in one step: all of it or nothing"));
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  layout->addWidget(buttons);
  QPushButton* cancel = buttons->button(QDialogButtonBox::Cancel);
  cancel->setDefault(true);  // an address is easily mistyped
  cancel->setFocus();
  resize(kWidth, sizeHint().height());
}

}  // namespace tarebowl::ui
