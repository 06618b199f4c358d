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

}  // namespace
}  // namespace tarebowl::ui
