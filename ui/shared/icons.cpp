// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/icons.h"

#include <QByteArray>
#include <QColor>
#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QPixmap>
#include <QPixmapCache>
#include <QSvgRenderer>
#include <QtMath>

#include <algorithm>
#include <utility>

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

QPixmap drawing(const QString& name, const QColor& ink, QSize size, qreal opacity = 1.0) {
  QPixmap pixmap(size);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  painter.setOpacity(opacity);
  QSvgRenderer(inked(name, ink)).render(&painter);
  return pixmap;
}

/// Read once for its size: cells are painted on every keystroke.
QPixmap keptDrawing(const QString& name, const QColor& ink, QSize size, qreal opacity = 1.0) {
  const QString key =
      QStringLiteral("tarebowl/%1/%2/%3/%4").arg(name, ink.name()).arg(size.width()).arg(opacity);
  QPixmap pixmap;
  if (!QPixmapCache::find(key, &pixmap)) {
    pixmap = drawing(name, ink, size, opacity);
    QPixmapCache::insert(key, pixmap);
  }
  return pixmap;
}

/// A drawing that is made when somebody looks: a window has dozens of buttons in rooms that nobody is in.
class InkedDrawing : public QIconEngine {
 public:
  InkedDrawing(QString name, const QColor& off, const QColor& on)
      : name_(std::move(name)), off_(off), on_(on) {}

  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    const int side = std::min(size.width(), size.height());
    return keptDrawing(name_, state == QIcon::On ? on_ : off_, {side, side},
                       mode == QIcon::Disabled ? kFaint : 1.0);
  }
  void paint(QPainter* painter, const QRect& box, QIcon::Mode mode, QIcon::State state) override {
    const qreal ratio = painter->device()->devicePixelRatio();
    QPixmap shown = pixmap(box.size() * ratio, mode, state);
    shown.setDevicePixelRatio(ratio);
    painter->drawPixmap(box.topLeft(), shown);
  }
  [[nodiscard]] QIconEngine* clone() const override { return new InkedDrawing(*this); }

 private:
  QString name_;
  QColor off_;
  QColor on_;
};

}  // namespace

QIcon icon(const QString& name, const QColor& ink) {
  return icon(name, ink, ink);
}

QIcon icon(const QString& name, const QColor& off, const QColor& on) {
  return QIcon(new InkedDrawing(name, off, on));  // which takes it
}

void paintIcon(QPainter& painter, const QRectF& box, const QString& name, const QColor& ink) {
  const qreal ratio = painter.device()->devicePixelRatio();
  const int side = qCeil(box.width());
  QPixmap pixmap = keptDrawing(name, ink, QSize(side, side) * ratio);
  pixmap.setDevicePixelRatio(ratio);
  painter.drawPixmap(box.topLeft(), pixmap);
}

QIcon programIcon() {
  return icon(QStringLiteral("tarebowl"), Qt::black);
}

}  // namespace tarebowl::ui
