// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/scale_stream.h"
#include "ui/shared/scale_settings.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <chrono>
#include <memory>

class QSerialPort;

namespace tarebowl::ui {

/// How long to wait: shorter ones keep tests short.
struct ScalePatience {
  std::chrono::milliseconds silence{1000};  ///< after which a line that stands alone is a weight
  std::chrono::milliseconds retry{2000};    ///< after which an unplugged scale is looked for again
};

/// A scale on a serial port. It announces weights and never writes them down: a person confirms. A scale that
/// is unplugged is told once and looked for until it is back.
class ScalePort : public QObject {
  Q_OBJECT
 public:
  explicit ScalePort(QObject* parent = nullptr, ScalePatience patience = {});
  ~ScalePort() override;

  void open(const ScaleSettings& settings);
  void close();
  [[nodiscard]] bool isConnected() const { return connected_; }
  /// Opened, perhaps to a scale that is gone at the moment.
  [[nodiscard]] bool isInUse() const { return connected_ || retry_.isActive(); }

 signals:
  void connectedChanged(bool connected);
  /// grams: below 0 where the pan is lighter than what was tared.
  void weightRead(double grams, bool settled);
  /// What a line that is no weight means for the person at the bench, or why there is no scale.
  void troubled(const QString& sentence);

 private:
  void connectAgain();
  void read();
  void tell(const intake::ScaleEvent& event);
  void lose(const QString& why);

  ScalePatience patience_;
  ScaleSettings settings_{};
  std::unique_ptr<QSerialPort> port_;
  intake::ScaleStream stream_{};
  QTimer silence_;
  QTimer retry_;
  bool connected_ = false;
  QString told_{};  ///< the last trouble, told once until something else happens
};

}  // namespace tarebowl::ui
