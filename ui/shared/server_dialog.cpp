// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/server_dialog.h"

#include "core/store/store_error.h"
#include "ui/shared/paths.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>
#include <optional>

namespace tarebowl::ui {
namespace {

constexpr int kUsualPort = 5432;  // PostgreSQL's
constexpr int kLastPort = 65535;
constexpr int kWidth = 560;
constexpr int kLeastLetters = 20;

/// libpq's word, which who runs the server knows, and what it means for who sits here.
QString meaningOf(std::string_view security) {
  if (security == "verify-full")
    return ServerDialog::tr("verify-full: encrypted, and the server proves its name");
  if (security == "verify-ca")
    return ServerDialog::tr("verify-ca: encrypted, and the server proves whose it is");
  if (security == "require") return ServerDialog::tr("require: encrypted, and the server proves nothing");
  if (security == "prefer") return ServerDialog::tr("prefer: encrypted where the server can");
  if (security == "allow") return ServerDialog::tr("allow: encrypted only where the server wants it");
  return ServerDialog::tr("disable: not encrypted");
}

std::optional<store::ServerPlace> readPlace(const QString& address) {
  try {
    return store::placeOf(toPath(address));
  } catch (const store::StoreError&) {
    return std::nullopt;
  }
}

/// Long entries are shortened, not the dialog made wider than a screen.
void keepNarrow(QComboBox& list) {
  list.setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  list.setMinimumContentsLength(kLeastLetters);
}

QString textOf(const std::string& text) {
  return QString::fromStdString(text);
}

}  // namespace

ServerDialog::ServerDialog(const std::vector<std::filesystem::path>& remembered, QWidget* parent)
    : QDialog(parent),
      host_(new QLineEdit),
      port_(new QSpinBox),
      database_(new QLineEdit),
      person_(new QLineEdit),
      security_(new QComboBox),
      missing_(new QLabel),
      open_(nullptr) {
  setWindowTitle(tr("Open a collection on a server"));
  port_->setRange(1, kLastPort);
  port_->setValue(kUsualPort);
  port_->setButtonSymbols(QAbstractSpinBox::NoButtons);  // nobody seeks a port step by step
  port_->setObjectName(QStringLiteral("port"));
  host_->setPlaceholderText(tr("empty: this machine"));
  person_->setText(qEnvironmentVariable("USER"));
  security_->addItem(tr("as is usual: verify-full, and on this machine prefer"));
  for (const std::string_view security : store::kSecurities)
    security_->addItem(meaningOf(security), QString::fromLatin1(security.data(), qsizetype(security.size())));
  keepNarrow(*security_);
  missing_->setWordWrap(true);
  missing_->setAccessibleDescription(tr("What is still needed"));
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  open_ = buttons->addButton(tr("Open"), QDialogButtonBox::AcceptRole);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* layout = new QVBoxLayout(this);
  auto* about = new QLabel(tr(
      "Several desks can share a collection on a PostgreSQL server. Whoever set it up can tell what belongs "
      "here. Where the server asks for a password, you are asked for it next; it is kept nowhere."));
  about->setWordWrap(true);
  layout->addWidget(about);
  addRows(remembered);
  layout->addWidget(missing_);
  layout->addWidget(buttons);
  open_->setDefault(true);  // once it stands in the dialog, or Cancel would be
  resize(kWidth, sizeHint().height());
  connect(database_, &QLineEdit::textChanged, this, &ServerDialog::showWhatIsMissing);
  showWhatIsMissing();
  host_->setFocus();
}

void ServerDialog::addRows(const std::vector<std::filesystem::path>& remembered) {
  auto* form = new QFormLayout;
  const auto add = [form](const QString& name, QWidget* field, const QString& what) {
    form->addRow(name, field);
    QString spoken = name;
    field->setAccessibleName(spoken.remove(QLatin1Char('&')));
    field->setAccessibleDescription(what);
    field->setToolTip(what);
  };
  QStringList before;
  for (const std::filesystem::path& address : remembered)
    if (const auto place = readPlace(toText(address))) before << toText(store::addressOf(*place));
  if (!before.isEmpty()) {
    auto* list = new QComboBox;
    keepNarrow(*list);
    list->addItem(tr("another one"));
    list->addItems(before);
    add(tr("&Was open before"), list, tr("Fills in what follows; passwords are not remembered"));
    connect(list, &QComboBox::currentIndexChanged, this, [this, list](int index) {
      const auto place = index > 0 ? readPlace(list->itemText(index)) : std::nullopt;
      if (place) fill(*place);
    });
    list->setCurrentIndex(1);
  }
  add(tr("&Server"), host_, tr("The name of the machine on which the server runs"));
  add(tr("P&ort"), port_, tr("5432, where whoever runs the server does not say otherwise"));
  add(tr("&Database"), database_, tr("The server's name for the collection"));
  add(tr("&Person"), person_, tr("Your name as the server knows you"));
  add(tr("Se&curity"), security_,
      tr("How the way to the server is guarded (sslmode); less than verify-full is for networks that are "
         "nobody else's"));
  static_cast<QVBoxLayout*>(layout())->addLayout(form);
}

void ServerDialog::fill(const store::ServerPlace& place) {
  host_->setText(textOf(place.host));
  bool isNumber = false;
  const int port = textOf(place.port).toInt(&isNumber);
  port_->setValue(isNumber ? port : kUsualPort);
  database_->setText(textOf(place.database));
  person_->setText(textOf(place.person));
  security_->setCurrentIndex(std::max(0, security_->findData(textOf(place.security))));
  further_ = place.further;
}

std::filesystem::path ServerDialog::address() const {
  return store::addressOf({.host = host_->text().trimmed().toStdString(),
                           .port = port_->value() == kUsualPort ? "" : std::to_string(port_->value()),
                           .database = database_->text().trimmed().toStdString(),
                           .person = person_->text().trimmed().toStdString(),
                           .security = security_->currentData().toString().toStdString(),
                           .further = further_});
}

void ServerDialog::showWhatIsMissing() {
  const bool isNamed = !database_->text().trimmed().isEmpty();
  missing_->setText(isNamed ? QString() : tr("The name of the database is still needed."));
  open_->setEnabled(isNamed);
}

}  // namespace tarebowl::ui
