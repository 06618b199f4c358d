// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/scale_bar.h"

#include "ui/kitchen/scale_text.h"
#include "ui/shared/decimal_text.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSerialPortInfo>

#include <array>

namespace tarebowl::ui {
namespace {

constexpr std::array kSpeeds{1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200};
constexpr int kAsSent = -1;

}  // namespace

ScaleBar::ScaleBar(QWidget* parent, ScalePatience patience)
    : QFrame(parent),
      port_(nullptr, patience),
      state_(new QLabel),
      ports_(new QComboBox),
      units_(new QComboBox),
      speeds_(new QComboBox),
      connect_(new QPushButton) {
  build();
  wire();
  showChoice();
}

void ScaleBar::build() {
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  state_->setWordWrap(true);
  layout->addWidget(state_, 1);
  for (QWidget* control : std::initializer_list<QWidget*>{ports_, speeds_, units_, connect_})
    layout->addWidget(control);
  ports_->setEditable(true);
  ports_->lineEdit()->setPlaceholderText(tr("port of the scale"));
  ports_->setAccessibleName(tr("Port of the scale"));
  ports_->setMinimumContentsLength(10);
  for (const int speed : kSpeeds) speeds_->addItem(tr("%1 baud").arg(speed), speed);
  speeds_->setCurrentIndex(speeds_->findData(ScaleSettings().speed));
  speeds_->setAccessibleName(tr("Speed of the port"));
  units_->addItem(tr("unit as sent"), kAsSent);
  for (const auto unit : {intake::ScaleUnit::Gram, intake::ScaleUnit::Kilogram, intake::ScaleUnit::Ounce,
                          intake::ScaleUnit::Pound})
    units_->addItem(scaleUnit(unit), static_cast<int>(unit));
  units_->setAccessibleName(tr("Unit of a scale that sends none"));
  listPorts();
}

void ScaleBar::listPorts() {
  for (const QSerialPortInfo& port : QSerialPortInfo::availablePorts()) ports_->addItem(port.portName());
  ports_->setCurrentText({});
}

void ScaleBar::wire() {
  connect(connect_, &QPushButton::clicked, this, &ScaleBar::toggle);
  connect(&port_, &ScalePort::weightRead, this, &ScaleBar::showWeight);
  connect(&port_, &ScalePort::troubled, state_, &QLabel::setText);
  connect(&port_, &ScalePort::connectedChanged, this, [this](bool connected) {
    if (connected) state_->setText(tr("The scale is connected; it has sent nothing yet."));
  });
}

void ScaleBar::use(const ScaleSettings& settings) {
  ports_->setCurrentText(settings.port);
  speeds_->setCurrentIndex(speeds_->findData(settings.speed));
  units_->setCurrentIndex(units_->findData(settings.unit ? static_cast<int>(*settings.unit) : kAsSent));
  if (settings.port.isEmpty())
    port_.close();
  else
    port_.open(settings);
  showChoice();
}

void ScaleBar::toggle() {
  if (!port_.isInUse() && !choosing_) {
    choosing_ = true;
    showChoice();
    ports_->setFocus();
    return;
  }
  choosing_ = false;
  ScaleSettings settings = typed();
  if (port_.isInUse()) settings.port.clear();
  use(settings);
  emit chosen(settings);
}

void ScaleBar::showChoice() {
  const bool used = port_.isInUse();
  for (QComboBox* choice : {ports_, speeds_, units_}) {
    choice->setFocusPolicy(choosing_ ? Qt::StrongFocus
                                     : Qt::ClickFocus);  // else Enter belongs to the weights
    choice->setVisible(choosing_);
  }
  connect_->setText(used ? tr("Let go") : choosing_ ? tr("Use scale") : tr("Scale…"));
  connect_->setAccessibleName(used        ? tr("Let go of the scale")
                              : choosing_ ? tr("Use the scale")
                                          : tr("Choose a scale"));
  if (!used) state_->setText(choosing_ ? QString() : tr("No scale: weights are typed."));
}

void ScaleBar::showWeight(double grams, bool settled) {
  const QString weight = tr("%1 g").arg(decimal(grams, 2));
  state_->setText(settled ? tr("Scale: %1, at rest").arg(weight) : tr("Scale: %1, moving").arg(weight));
  if (settled) emit weightRead(grams);
}

ScaleSettings ScaleBar::typed() const {
  ScaleSettings settings{.port = ports_->currentText().trimmed(), .speed = speeds_->currentData().toInt()};
  if (units_->currentData().toInt() != kAsSent)
    settings.unit = static_cast<intake::ScaleUnit>(units_->currentData().toInt());
  return settings;
}

QString ScaleBar::state() const {
  return state_->text();
}

}  // namespace tarebowl::ui
