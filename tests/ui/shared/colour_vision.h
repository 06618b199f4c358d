// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QImage>

#include <array>

namespace tarebowl::ui {

/// Eyes that lack the cones for red, for green, for blue.
enum class ColourVision { Protan, Deutan, Tritan };
inline constexpr std::array kColourVisions{ColourVision::Protan, ColourVision::Deutan, ColourVision::Tritan};

[[nodiscard]] const char* nameOf(ColourVision eye);  // "protan"

/// What such an eye sees of a colour or a picture in sRGB: the matrices for severity 1.0 of G. M. Machado,
/// M. M. Oliveira and L. A. F. Fernandes, "A physiologically-based model for simulation of color vision
/// deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (2009), 1291–1298, applied to
/// linear RGB. (The paper was not at hand: the numbers are as several independent programs give them.)
[[nodiscard]] QColor seenBy(ColourVision eye, const QColor& color);
[[nodiscard]] QImage seenBy(ColourVision eye, const QImage& picture);

/// How far two colours are apart: Euclidean distance in CIE L*a*b* (CIE 1976), white point D65. About 2.3 is
/// just noticeable side by side.
[[nodiscard]] double distance(const QColor& a, const QColor& b);

}  // namespace tarebowl::ui
