// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/attachment_path.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace tarebowl::health {
namespace {

namespace fs = std::filesystem;

/// A collection's folder with a picture in it, and a letter that lies beside the folder.
class AttachmentPathTest : public ::testing::Test {
 protected:
  AttachmentPathTest() {
    const auto* info = ::testing::UnitTest::GetInstance()->current_test_info();
    whole = fs::path(::testing::TempDir()) / (std::string("attachment_path_") + info->name());
    fs::remove_all(whole);
    fs::create_directories(folder() / "reports");
    std::ofstream(folder() / "reports" / "radiograph left.png") << "picture";
    std::ofstream(whole / "letter.pdf") << "private";
  }
  ~AttachmentPathTest() override { fs::remove_all(whole); }
  [[nodiscard]] fs::path folder() const { return whole / "collection"; }

  fs::path whole;
};

TEST_F(AttachmentPathTest, AFileInTheFolderIsNamedByItsPathFromThere) {
  EXPECT_EQ(attachmentPath(folder(), folder() / "reports" / "radiograph left.png"),
            "reports/radiograph left.png");
  EXPECT_EQ(attachmentPath(folder() / "reports" / "..", folder() / "reports" / "radiograph left.png"),
            "reports/radiograph left.png");
}

TEST_F(AttachmentPathTest, AFileBesideTheFolderHasNoPathFromThere) {
  EXPECT_EQ(attachmentPath(folder(), whole / "letter.pdf"), std::nullopt);
  EXPECT_EQ(attachmentPath(folder(), folder() / ".." / "letter.pdf"), std::nullopt);
  EXPECT_EQ(attachmentPath(folder(), folder()), std::nullopt);
  EXPECT_EQ(attachmentPath(folder(), folder() / "never there.png"), std::nullopt);
}

TEST_F(AttachmentPathTest, ALinkDoesNotLeadOutOfTheFolder) {
  std::error_code error;
  fs::create_symlink(whole / "letter.pdf", folder() / "link.pdf", error);
  if (error) GTEST_SKIP() << "this disk holds no links";
  EXPECT_EQ(attachmentPath(folder(), folder() / "link.pdf"), std::nullopt);
  fs::create_directory_symlink(whole, folder() / "up");
  EXPECT_EQ(attachmentPath(folder(), folder() / "up" / "letter.pdf"), std::nullopt);
}

}  // namespace
}  // namespace tarebowl::health
