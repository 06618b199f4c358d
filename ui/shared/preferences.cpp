// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/preferences.h"

#include "core/store/server_address.h"
#include "ui/shared/paths.h"

#include <QSettings>
#include <QStandardPaths>
#include <QStringList>

#include <array>
#include <utility>

namespace tarebowl::ui {
namespace {

const QString kPerson = QStringLiteral("person");
const QString kCollections = QStringLiteral("collections");
const QString kGeometry = QStringLiteral("seat/geometry");
const QString kRoom = QStringLiteral("seat/room");
const QString kEnergy = QStringLiteral("energy");
const QString kTheme = QStringLiteral("theme");
const QString kLanguage = QStringLiteral("language");
const QString kScalePort = QStringLiteral("scale/port");
const QString kScaleSpeed = QStringLiteral("scale/speed");
const QString kScaleUnit = QStringLiteral("scale/unit");

/// As they stand in the file.
constexpr std::array<std::pair<const char*, intake::ScaleUnit>, 4> kScaleUnits{
    {{"g", intake::ScaleUnit::Gram},
     {"kg", intake::ScaleUnit::Kilogram},
     {"oz", intake::ScaleUnit::Ounce},
     {"lb", intake::ScaleUnit::Pound}}};

constexpr int kMostRecent = 8;

QString ownFile() {
  return QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation) +
         QStringLiteral("/tarebowl.ini");
}

}  // namespace

Preferences::Preferences() : Preferences(ownFile()) {}

Preferences::Preferences(QString file) : file_(std::move(file)) {}

QString Preferences::person() const {
  const QString name = QSettings(file_, QSettings::IniFormat).value(kPerson).toString();
  if (!name.isEmpty()) return name;
  const QString account = qEnvironmentVariable("USER");
  return account.isEmpty() ? qEnvironmentVariable("USERNAME") : account;
}

void Preferences::setPerson(const QString& name) const {
  QSettings(file_, QSettings::IniFormat).setValue(kPerson, name);
}

std::vector<std::filesystem::path> Preferences::recentCollections() const {
  std::vector<std::filesystem::path> files;
  for (const QString& name : QSettings(file_, QSettings::IniFormat).value(kCollections).toStringList())
    if (!name.isEmpty()) files.push_back(toPath(name));
  return files;
}

void Preferences::setLastCollection(const std::filesystem::path& file) const {
  QSettings settings(file_, QSettings::IniFormat);
  QStringList names = settings.value(kCollections).toStringList();
  const bool isOnServer = store::isServerAddress(file);
  const QString name = toText(isOnServer ? file : std::filesystem::absolute(file).lexically_normal());
  if (!names.isEmpty() && names.front() == name) return;
  names.removeAll(name);
  names.prepend(name);
  settings.setValue(kCollections, QStringList(names.mid(0, kMostRecent)));
}

std::optional<Seat> Preferences::seat() const {
  const QSettings file(file_, QSettings::IniFormat);
  if (!file.contains(kGeometry)) return std::nullopt;
  return Seat{.geometry = file.value(kGeometry).toByteArray(), .room = file.value(kRoom).toInt()};
}

void Preferences::setSeat(const Seat& seat) const {
  QSettings file(file_, QSettings::IniFormat);
  file.setValue(kGeometry, seat.geometry);
  file.setValue(kRoom, seat.room);
}

EnergyUnit Preferences::energy() const {
  const QString name = QSettings(file_, QSettings::IniFormat).value(kEnergy).toString();
  return name == QLatin1String("kJ") ? EnergyUnit::Kilojoule : EnergyUnit::Kilocalorie;
}

void Preferences::setEnergy(EnergyUnit energy) const {
  const QString name = energy == EnergyUnit::Kilojoule ? QStringLiteral("kJ") : QStringLiteral("kcal");
  QSettings(file_, QSettings::IniFormat).setValue(kEnergy, name);
}

ThemeChoice Preferences::theme() const {
  const QString name = QSettings(file_, QSettings::IniFormat).value(kTheme).toString();
  if (name == QLatin1String("light")) return ThemeChoice::Light;
  if (name == QLatin1String("dark")) return ThemeChoice::Dark;
  return ThemeChoice::System;
}

void Preferences::setTheme(ThemeChoice choice) const {
  const QString name = choice == ThemeChoice::Light  ? QStringLiteral("light")
                       : choice == ThemeChoice::Dark ? QStringLiteral("dark")
                                                     : QString();
  QSettings(file_, QSettings::IniFormat).setValue(kTheme, name);
}

QString Preferences::language() const {
  return QSettings(file_, QSettings::IniFormat).value(kLanguage).toString();
}

void Preferences::setLanguage(const QString& code) const {
  QSettings(file_, QSettings::IniFormat).setValue(kLanguage, code);
}

ScaleSettings Preferences::scale() const {
  const QSettings file(file_, QSettings::IniFormat);
  ScaleSettings scale{.port = file.value(kScalePort).toString()};
  if (const int speed = file.value(kScaleSpeed).toInt(); speed > 0) scale.speed = speed;
  for (const auto& [word, unit] : kScaleUnits)
    if (file.value(kScaleUnit).toString() == QLatin1String(word)) scale.unit = unit;
  return scale;
}

void Preferences::setScale(const ScaleSettings& scale) const {
  QSettings file(file_, QSettings::IniFormat);
  file.setValue(kScalePort, scale.port);
  file.setValue(kScaleSpeed, scale.speed);
  file.remove(kScaleUnit);
  for (const auto& [word, unit] : kScaleUnits)
    if (scale.unit == unit) file.setValue(kScaleUnit, QLatin1String(word));
}

}  // namespace tarebowl::ui
