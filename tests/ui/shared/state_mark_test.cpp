// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/state_mark.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <set>

namespace tarebowl::ui {
namespace {

constexpr std::array kMarks{Mark::Met, Mark::AtLimit, Mark::Lacking, Mark::Over, Mark::Unknown};
constexpr int kSide = 24;

/// Only the shape: which pixels are inked at all, as a print in one grey would show them.
QImage shapeOf(Mark mark) {
  QImage image(kSide, kSide, QImage::Format_ARGB32);
  image.fill(Qt::transparent);
  QPainter painter(&image);
  paintMark(painter, QRectF(4, 4, kSide - 8, kSide - 8), mark, lightTheme());
  painter.end();
  return image.convertToFormat(QImage::Format_Alpha8);
}

double difference(const QImage& a, const QImage& b) {
  int differing = 0;
  for (int y = 0; y < kSide; ++y)
    for (int x = 0; x < kSide; ++x)
      if (std::abs(a.constScanLine(y)[x] - b.constScanLine(y)[x]) > 128) ++differing;
  return static_cast<double>(differing) / (kSide * kSide);
}

TEST(States, AreFiveDifferentWords) {
  std::set<QString> words;
  for (const Mark mark : kMarks) words.insert(wordOf(mark));
  EXPECT_EQ(words.size(), kMarks.size());
}

TEST(States, AreToldApartByShapeAloneInGreyscale) {
  for (std::size_t i = 0; i < kMarks.size(); ++i)
    for (std::size_t j = i + 1; j < kMarks.size(); ++j)
      EXPECT_GT(difference(shapeOf(kMarks[i]), shapeOf(kMarks[j])), 0.05)
          << wordOf(kMarks[i]).toStdString() << " and " << wordOf(kMarks[j]).toStdString();
}

TEST(States, OfTheBalanceHaveTheirMarks) {
  using diet::TargetState;
  EXPECT_EQ(markOf(TargetState::Met), Mark::Met);
  EXPECT_EQ(markOf(TargetState::AtMin), Mark::AtLimit);
  EXPECT_EQ(markOf(TargetState::AtMax), Mark::AtLimit);
  EXPECT_EQ(markOf(TargetState::Short), Mark::Lacking);
  EXPECT_EQ(markOf(TargetState::Over), Mark::Over);
  EXPECT_EQ(markOf(TargetState::Unknown), Mark::Unknown);
}

}  // namespace
}  // namespace tarebowl::ui
