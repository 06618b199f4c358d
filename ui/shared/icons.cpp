// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/icons.h"

#include <QByteArray>
#include <QColor>
#include <QFile>
#include <QPainter>
#include <QPixmap>
#include <QPixmapCache>
#include <QSvgRenderer>
#include <QtMath>

/// The drawings lie in a static library: the linker keeps them only where they are asked for by name. (Qt
/// wants this call outside any namespace.)
static void keepDrawings() {
  Q_INIT_RESOURCE(icons);
}

namespace tarebowl::ui {
namespace {

/// The drawings say "#000000" for the ink.
QByteArray inked(const QString& name, const QColor& ink) {
  keepDrawings();
  QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
  if (!file.open(QIODevice::ReadOnly)) return {};
  return file.readAll().replace("#000000", ink.name().toLatin1());
}

constexpr qreal kFaint = 0.35;  // of a button that cannot be pressed now

QPixmap drawing(const QString& name, const QColor& ink, int side, qreal ratio, qreal opacity = 1.0) {
  QPixmap pixmap(QSize(side, side) * ratio);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  painter.setOpacity(opacity);
  QSvgRenderer(inked(name, ink)).render(&painter);
  painter.end();
  pixmap.setDevicePixelRatio(ratio);
  return pixmap;
}

constexpr qreal kRatios[] = {1.0, 2.0};

}  // namespace

QIcon icon(const QString& name, const QColor& ink, int side) {
  return icon(name, ink, ink, side);
}

QIcon icon(const QString& name, const QColor& off, const QColor& on, int side) {
  QIcon result;
  for (const qreal ratio : kRatios) {
    result.addPixmap(drawing(name, off, side, ratio), QIcon::Normal, QIcon::Off);
    result.addPixmap(drawing(name, on, side, ratio), QIcon::Normal, QIcon::On);
    result.addPixmap(drawing(name, off, side, ratio, kFaint), QIcon::Disabled, QIcon::Off);
  }
  return result;
}

void paintIcon(QPainter& painter, const QRectF& box, const QString& name, const QColor& ink) {
  // Cells are painted on every keystroke; a drawing is read once for its size.
  const int side = qCeil(box.width());
  const qreal ratio = painter.device()->devicePixelRatio();
  const QString key = QStringLiteral("tarebowl/%1/%2/%3/%4").arg(name, ink.name()).arg(side).arg(ratio);
  QPixmap pixmap;
  if (!QPixmapCache::find(key, &pixmap)) {
    pixmap = drawing(name, ink, side, ratio);
    QPixmapCache::insert(key, pixmap);
  }
  painter.drawPixmap(box.topLeft(), pixmap);
}

QIcon programIcon() {
  QIcon result;
  for (const int side : {16, 32, 48, 128})
    result.addPixmap(drawing(QStringLiteral("tarebowl"), Qt::black, side, 1.0));
  return result;
}

}  // namespace tarebowl::ui
