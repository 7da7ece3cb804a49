#pragma once

#include <QtGlobal>

#include "app/command_line/call.h"

namespace coutil {

// Options that mean the same wherever they stand.
inline constexpr OptionSpec kGarmentOption{
    "--garment", "NAME", false,
    QT_TRANSLATE_NOOP("CommandLine", "which garment, when the folio has several")};
inline constexpr OptionSpec kRevisionOption{
    "--revision", "ID", false,
    QT_TRANSLATE_NOOP("CommandLine", "a number, pencil or latest (latest)")};
inline constexpr OptionSpec kPencilOption{
    "--pencil", "NAME", false,
    QT_TRANSLATE_NOOP("CommandLine", "which pencil, when there are several (the newest)")};
inline constexpr OptionSpec kDateOption{
    "--date", "YYYY-MM-DD", false,
    QT_TRANSLATE_NOOP("CommandLine", "the date to use, so that a run can be repeated to the byte")};
inline constexpr OptionSpec kNoNameOption{
    "--no-name", "", false, QT_TRANSLATE_NOOP("CommandLine", "leave the client's name out")};
inline constexpr OptionSpec kOutOption{
    "-o", "OUT", false, QT_TRANSLATE_NOOP("CommandLine", "the file to write (standard output)")};
inline constexpr OptionSpec kJsonOption{"--json", "", false,
                                        QT_TRANSLATE_NOOP("CommandLine", "as JSON")};
inline constexpr OptionSpec kSvgOption{
    "--svg", "", false, QT_TRANSLATE_NOOP("CommandLine", "as SVG, in true millimetres")};
inline constexpr OptionSpec kDxfOption{
    "--dxf", "", false, QT_TRANSLATE_NOOP("CommandLine", "as DXF, layers after ASTM D6673")};
inline constexpr OptionSpec kMirroredOption{
    "--mirrored-too", "", false,
    QT_TRANSLATE_NOOP("CommandLine", "draw the mirrored twin of every pair as well")};
inline constexpr OptionSpec kKerfOption{
    "--kerf", "MM", false,
    QT_TRANSLATE_NOOP("CommandLine", "what the beam or blade takes away (0), up to 2")};
inline constexpr OptionSpec kHelpOption{"--help", "", false,
                                        QT_TRANSLATE_NOOP("CommandLine", "show this help")};

}  // namespace coutil
