// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/sheet_export.h"

#include "core/transfer/desk_sheet.h"
#include "tests/ui/diets/example_diets.h"
#include "ui/shared/paths.h"

#include <QFile>
#include <QPageSize>
#include <QPdfWriter>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

class SheetExport : public ::testing::Test {
 protected:
  [[nodiscard]] exchange::DietSheet sheet() const {
    const store::Collection collection = example.elsewhere();
    return transfer::sheetOf(transfer::readDesk(collection, example.draft(), exampleToday()).value());
  }
  [[nodiscard]] std::filesystem::path path(const char* name) const {
    return toPath(folder.filePath(QLatin1String(name)));
  }
  [[nodiscard]] QByteArray bytesOf(const char* name) const {
    QFile file(folder.filePath(QLatin1String(name)));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
  }

  QTemporaryDir folder;
  ExampleDiets example;
};

TEST_F(SheetExport, APageIsOnePage) {
  exchange::DietSheet full = sheet();
  while (full.foods.size() < 25) full.foods.push_back(full.foods.front());
  while (full.targets.size() < 35) full.targets.push_back(full.targets.front());
  ASSERT_FALSE(writeSheet(full, path("bowl.pdf")));
  const QByteArray pdf = bytesOf("bowl.pdf");
  EXPECT_TRUE(pdf.startsWith("%PDF-"));
  static const QRegularExpression kPage(QStringLiteral("/Type\\s*/Page\\b(?!s)"));
  EXPECT_EQ(QString::fromLatin1(pdf).count(kPage), 1);
}

TEST_F(SheetExport, IsAlsoAWebPageAndASpreadsheet) {
  ASSERT_FALSE(writeSheet(sheet(), path("bowl.html")));
  EXPECT_TRUE(bytesOf("bowl.html").contains("Kale"));
  ASSERT_FALSE(writeSheet(sheet(), path("bowl.xlsx")));
  EXPECT_TRUE(bytesOf("bowl.xlsx").startsWith("PK"));
}

TEST_F(SheetExport, SaysWhyNothingWasWritten) {
  EXPECT_TRUE(writeSheet(sheet(), path("no-such-folder/bowl.pdf")));
  const auto why = writeSheet(sheet(), path("bowl.odt"));
  ASSERT_TRUE(why);
  EXPECT_TRUE(why->contains(QStringLiteral(".pdf")));
  EXPECT_FALSE(std::filesystem::exists(path("bowl.odt")));
}

/// A printer has 1200 dots where the PDF has 96; the page is the same.
TEST_F(SheetExport, APrinterGetsThePageOfThePdf) {
  exchange::DietSheet full = sheet();
  while (full.foods.size() < 25) full.foods.push_back(full.foods.front());
  while (full.targets.size() < 35) full.targets.push_back(full.targets.front());
  ASSERT_EQ(writeSheet(full, path("page.pdf")), std::nullopt);
  {
    QPdfWriter printer(toText(path("printed.pdf")));
    printer.setPageSize(QPageSize(QPageSize::A4));
    printer.setPageMargins(QMarginsF(12, 12, 12, 12), QPageLayout::Millimeter);
    printer.setResolution(1200);
    printSheet(full, printer);
  }
  const auto pages = [this](const char* name) {
    return QString::fromLatin1(bytesOf(name))
        .count(QRegularExpression(QStringLiteral("/Type\\s*/Page\\b(?!s)")));
  };
  EXPECT_EQ(pages("printed.pdf"), 1);
  EXPECT_EQ(pages("page.pdf"), 1);
}

}  // namespace
}  // namespace tarebowl::ui
