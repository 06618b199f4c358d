// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/portion_list.h"

#include <QColor>
#include <QImage>

#include <gtest/gtest.h>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

const Portion kCarrot{QStringLiteral("30.0 g"), QStringLiteral("Carrot, boiled"),
                      QStringLiteral("raw: 32.3 g Carrot")};
const Portion kPapaya{QStringLiteral("1,348 g"), QStringLiteral("Papaya, raw"), {}};
constexpr int kWide = 600;

/// The first and the last column of pixels of a picture's rows that are not its ground.
std::pair<int, int> inked(const QImage& picture, int top, int bottom, int left, int right) {
  int first = right;
  int last = left;
  const QRgb ground = picture.pixel(kWide - 1, 0);
  for (int y = top; y < bottom; ++y)
    for (int x = left; x < right; ++x)
      if (picture.pixel(x, y) != ground) {
        first = std::min(first, x);
        last = std::max(last, x);
      }
  return {first, last};
}

TEST(PortionList, SaysEachPortionAndWhatIsRawOfIt) {
  PortionList list;
  list.setPortions({kCarrot, kPapaya});
  EXPECT_EQ(list.texts(),
            (QStringList{QStringLiteral("30.0 g  Carrot, boiled"), QStringLiteral("raw: 32.3 g Carrot"),
                         QStringLiteral("1,348 g  Papaya, raw")}));
  EXPECT_TRUE(list.accessibleName().contains(QStringLiteral("1,348 g  Papaya, raw")));
}

TEST(PortionList, AmountsEndWhereTheLongestEndsAndFoodsBeginUnderEachOther) {
  PortionList list;
  Portion plain = kCarrot;
  plain.raw.clear();
  plain.food = kPapaya.food;
  list.setPortions({plain, kPapaya});
  list.resize(kWide, list.heightForWidth(kWide));
  const QImage picture = list.grab().toImage();
  const int line = list.fontMetrics().height();
  const int between = list.fontMetrics().horizontalAdvance(kPapaya.amount) + 4;
  EXPECT_EQ(inked(picture, 0, line, 0, between).second, inked(picture, line, 2 * line, 0, between).second);
  EXPECT_GT(inked(picture, 0, line, 0, between).first, inked(picture, line, 2 * line, 0, between).first);
  EXPECT_EQ(inked(picture, 0, line, between, kWide).first,
            inked(picture, line, 2 * line, between, kWide).first);
}

TEST(PortionList, IsTallerWhereItIsNarrowAndNothingWithoutPortions) {
  PortionList list;
  EXPECT_EQ(list.heightForWidth(kWide), 0);
  list.setPortions({kCarrot, kPapaya});
  const int line = list.fontMetrics().height();
  EXPECT_EQ(list.heightForWidth(kWide), 3 * line);
  EXPECT_GT(list.heightForWidth(list.minimumSizeHint().width()), 3 * line);
  list.setPortions({kPapaya});
  EXPECT_EQ(list.heightForWidth(kWide), line);
}

TEST(PortionList, MeasuresAnewInAnotherFont) {
  PortionList list;
  list.setPortions({kPapaya});
  const int before = list.heightForWidth(kWide);
  QFont larger = list.font();
  larger.setPointSize(40);
  list.setFont(larger);
  EXPECT_GT(list.heightForWidth(kWide), before);
}

}  // namespace
}  // namespace tarebowl::ui
