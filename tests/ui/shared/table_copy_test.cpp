// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/table_copy.h"

#include <QStandardItemModel>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

TEST(CopiedTable, IsTabSeparatedWithItsHeaders) {
  QStandardItemModel model(2, 2);
  model.setHorizontalHeaderLabels({QStringLiteral("food"), QStringLiteral("g")});
  model.setItem(0, 0, new QStandardItem(QStringLiteral("Kale")));
  model.setItem(0, 1, new QStandardItem(QStringLiteral("2")));
  model.setItem(1, 0, new QStandardItem(QStringLiteral("Egg\twith tab")));
  model.setItem(1, 1, new QStandardItem(QStringLiteral("?")));
  EXPECT_EQ(tabSeparated(model).toStdString(), "food\tg\nKale\t2\nEgg with tab\t?\n");
}

TEST(CopiedTable, RunsNothingInASpreadsheet) {
  for (const char* name :
       {"=1+1", "@SUM(A1)", "+cmd|' /C calc'!A0", "-2+3+cmd|' /C calc'!A0", " =1+1", "+3 (=A1)"})
    EXPECT_EQ(copiedCell(QString::fromUtf8(name)).toStdString(), std::string("'") + name);
  EXPECT_EQ(copiedCell(QStringLiteral("kale\r=1+1")).toStdString(), "kale =1+1") << "no cell of its own";
}

TEST(CopiedTable, AmountsStayNumbers) {
  for (const char* amount : {"-0.4", "-0.4 g", "+3 %", "1,200.5 kcal", "kale"})
    EXPECT_EQ(copiedCell(QString::fromUtf8(amount)).toStdString(), amount);
}

}  // namespace
}  // namespace tarebowl::ui
