// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/shared/colour_vision.h"

#include <QHash>

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace tarebowl::ui {
namespace {

using Triple = std::array<double, 3>;
using Matrix = std::array<Triple, 3>;

constexpr Matrix kProtan{
    {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}};
constexpr Matrix kDeutan{
    {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}};
constexpr Matrix kTritan{
    {{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}};

/// From sRGB (IEC 61966-2-1) to the eye's own units (D65), as a matrix for linear RGB.
constexpr Matrix kToXyz{{{0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}}};
constexpr Triple kWhite{0.9505, 1.0, 1.089};

const Matrix& matrixOf(ColourVision eye) {
  switch (eye) {
    case ColourVision::Protan:
      return kProtan;
    case ColourVision::Deutan:
      return kDeutan;
    case ColourVision::Tritan:
      break;
  }
  return kTritan;
}

Triple times(const Matrix& matrix, const Triple& vector) {
  Triple product{};
  for (std::size_t row = 0; row < 3; ++row)
    for (std::size_t column = 0; column < 3; ++column) product[row] += matrix[row][column] * vector[column];
  return product;
}

double toLinear(int channel) {
  const double c = channel / 255.0;
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

int fromLinear(double linear) {
  const double l = std::clamp(linear, 0.0, 1.0);
  const double c = l <= 0.0031308 ? 12.92 * l : 1.055 * std::pow(l, 1.0 / 2.4) - 0.055;
  return static_cast<int>(std::lround(c * 255.0));
}

Triple linear(const QColor& color) {
  return {toLinear(color.red()), toLinear(color.green()), toLinear(color.blue())};
}

Triple lab(const QColor& color) {
  const Triple xyz = times(kToXyz, linear(color));
  Triple f{};
  for (std::size_t i = 0; i < 3; ++i) {
    const double t = xyz[i] / kWhite[i];
    f[i] = t > 216.0 / 24389.0 ? std::cbrt(t) : (24389.0 / 27.0 * t + 16.0) / 116.0;
  }
  return {116.0 * f[1] - 16.0, 500.0 * (f[0] - f[1]), 200.0 * (f[1] - f[2])};
}

}  // namespace

const char* nameOf(ColourVision eye) {
  switch (eye) {
    case ColourVision::Protan:
      return "protan";
    case ColourVision::Deutan:
      return "deutan";
    case ColourVision::Tritan:
      break;
  }
  return "tritan";
}

QColor seenBy(ColourVision eye, const QColor& color) {
  const Triple seen = times(matrixOf(eye), linear(color));
  return {fromLinear(seen[0]), fromLinear(seen[1]), fromLinear(seen[2]), color.alpha()};
}

QImage seenBy(ColourVision eye, const QImage& picture) {
  QImage seen = picture.convertToFormat(QImage::Format_RGB32);
  QHash<QRgb, QRgb> known;  // a window has few colours
  for (int y = 0; y < seen.height(); ++y)
    for (int x = 0; x < seen.width(); ++x) {
      const QRgb pixel = seen.pixel(x, y);
      auto found = known.find(pixel);
      if (found == known.end()) found = known.insert(pixel, seenBy(eye, QColor(pixel)).rgb());
      seen.setPixel(x, y, *found);
    }
  return seen;
}

double distance(const QColor& a, const QColor& b) {
  const Triple left = lab(a);
  const Triple right = lab(b);
  return std::hypot(left[0] - right[0], left[1] - right[1], left[2] - right[2]);
}

}  // namespace tarebowl::ui
