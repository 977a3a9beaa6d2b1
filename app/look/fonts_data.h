// The subset font files, as assets/look/subset_fonts.sh writes them at build time.
#pragma once

namespace gs::look {

extern const unsigned kB612RegularSize, kB612BoldSize, kB612ItalicSize;  // bytes
extern const unsigned char kB612Regular[], kB612Bold[], kB612Italic[];

}  // namespace gs::look
