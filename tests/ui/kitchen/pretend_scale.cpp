// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/kitchen/pretend_scale.h"

#include <QFile>

#include <fcntl.h>
#include <unistd.h>

#include <cstdlib>
#include <stdexcept>

namespace tarebowl::ui {

PretendScale::PretendScale() {
  plugIn();
}

PretendScale::~PretendScale() {
  unplug();
}

QString PretendScale::port() const {
  return folder_.filePath(QStringLiteral("scale"));
}

void PretendScale::send(std::string_view bytes) const {
  if (::write(far_, bytes.data(), bytes.size()) != static_cast<ssize_t>(bytes.size()))
    throw std::runtime_error("the pseudo-terminal takes no bytes");
}

void PretendScale::unplug() {
  if (far_ >= 0) ::close(far_);
  far_ = -1;
  QFile::remove(port());
}

void PretendScale::plugIn() {
  far_ = ::posix_openpt(O_RDWR | O_NOCTTY);
  if (far_ < 0 || ::grantpt(far_) != 0 || ::unlockpt(far_) != 0)
    throw std::runtime_error("no pseudo-terminal here");
  QFile::link(QString::fromLocal8Bit(::ptsname(far_)), port());
}

}  // namespace tarebowl::ui
