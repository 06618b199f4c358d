// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/energy_unit.h"

#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

namespace tarebowl::ui {

/// What the window's title and its status line say while a room is in sight.
struct RoomState {
  QString title;                       ///< of what is open: "Brackenmere foods"
  QString file;                        ///< its file's name; empty where there is none
  bool saved = true;                   ///< on the disk as it stands
  QString savedText;                   ///< "saved", "not saved (Ctrl+S)"
  QString units;                       ///< units and bases in force
  std::optional<EnergyUnit> energy{};  ///< where the person may choose in which unit energy is read
  QString note;                        ///< what the room is doing or did
  QString sampleText;                  ///< whose invented sample this is; empty where it is nobody's
};

/// Something that the finder can go to.
struct FinderHit {
  QString name;    ///< "House crickets, adult"
  QString remark;  ///< "live · insect"
  qint64 id = 0;   ///< the room's own
};

/// A room of the window. What the frame must know of it, and no more.
class Room : public QWidget {
  Q_OBJECT
 public:
  using QWidget::QWidget;

  [[nodiscard]] virtual RoomState state() const = 0;
  /// Where part of a name is found, the best first and no more than `most`; empty text finds nothing.
  [[nodiscard]] virtual std::vector<FinderHit> find(const QString& partOfName, int most) const = 0;
  virtual void goTo(qint64 id) = 0;
  /// Something is open here, even where no collection is or where it has nothing for this room.
  [[nodiscard]] virtual bool hasOwnFile() const { return false; }
  /// True once nothing would be lost by closing the window.
  [[nodiscard]] virtual bool mayLeave() { return true; }

 signals:
  void stateChanged();
};

}  // namespace tarebowl::ui
