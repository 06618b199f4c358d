// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/scale_port.h"

#include "ui/kitchen/scale_text.h"

#include <QSerialPort>

namespace tarebowl::ui {
namespace {

constexpr qint64 kMostAtOnce = 4096;

}  // namespace

ScalePort::ScalePort(QObject* parent, ScalePatience patience)
    : QObject(parent), patience_(patience), port_(std::make_unique<QSerialPort>()) {
  silence_.setSingleShot(true);
  retry_.setSingleShot(true);
  connect(port_.get(), &QSerialPort::readyRead, this, &ScalePort::read);
  connect(port_.get(), &QSerialPort::errorOccurred, this, [this](QSerialPort::SerialPortError error) {
    if (error == QSerialPort::NoError || error == QSerialPort::TimeoutError || !connected_) return;
    // Closing the port in its own signal pulls the rug from under it.
    QTimer::singleShot(0, this, [this] { lose(scaleGone(settings_.port)); });
  });
  connect(&silence_, &QTimer::timeout, this, [this] {
    if (const auto event = stream_.quiet()) tell(*event);
  });
  connect(&retry_, &QTimer::timeout, this, &ScalePort::connectAgain);
}

ScalePort::~ScalePort() {
  port_->disconnect(this);
}

void ScalePort::open(const ScaleSettings& settings) {
  close();
  settings_ = settings;
  connectAgain();
}

void ScalePort::close() {
  retry_.stop();
  silence_.stop();
  told_.clear();
  const bool was = std::exchange(connected_, false);
  port_->close();
  if (was) emit connectedChanged(false);
}

void ScalePort::connectAgain() {
  stream_ = intake::ScaleStream(settings_.unit);
  port_->setPortName(settings_.port);
  port_->setBaudRate(settings_.speed);
  if (!port_->open(QIODevice::ReadWrite)) {
    lose(scaleNotOpened(settings_.port, port_->errorString()));
    return;
  }
  told_.clear();
  connected_ = true;
  emit connectedChanged(true);
}

void ScalePort::lose(const QString& why) {
  const bool was = std::exchange(connected_, false);
  silence_.stop();
  port_->close();
  retry_.start(patience_.retry);
  if (was) emit connectedChanged(false);
  if (std::exchange(told_, why) != why) emit troubled(why);
}

void ScalePort::read() {
  silence_.start(patience_.silence);
  while (port_->bytesAvailable() > 0) {
    const QByteArray bytes = port_->read(kMostAtOnce);
    if (bytes.isEmpty()) return;
    for (const intake::ScaleEvent& event :
         stream_.take({bytes.constData(), static_cast<std::size_t>(bytes.size())}))
      tell(event);
  }
}

void ScalePort::tell(const intake::ScaleEvent& event) {
  if (event.mass) {
    told_.clear();
    emit weightRead(event.mass->value(), event.settled);
    return;
  }
  const QString sentence = scaleFault(*event.fault, QString::fromLatin1(event.line).trimmed());
  if (sentence.isEmpty() || std::exchange(told_, sentence) == sentence) return;
  emit troubled(sentence);
}

}  // namespace tarebowl::ui
