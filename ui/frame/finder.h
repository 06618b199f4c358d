// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/room.h"

#include <QFrame>

#include <functional>
#include <vector>

class QLineEdit;
class QListWidget;

namespace tarebowl::ui {

/// Goes to a food or a diet by typing part of its name. It lies over the window while it is wanted.
class Finder : public QFrame {
  Q_OBJECT
 public:
  struct Place {
    QString room;  ///< "Foods"
    Room* where;
  };
  /// places: the rooms in the order in which they are asked.
  explicit Finder(QWidget* window);

  void open(std::vector<Place> places);
  [[nodiscard]] int hitCount() const;

 signals:
  void chosen(tarebowl::ui::Room* room, qint64 id);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Hit {
    Room* where;
    qint64 id;
  };
  void look(const QString& text);
  void choose();
  void fit();

  QLineEdit* field_;
  QListWidget* list_;
  std::vector<Place> places_;
  std::vector<Hit> hits_;
};

}  // namespace tarebowl::ui
