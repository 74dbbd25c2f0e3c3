package drawwell.desktop

import drawwell.ui.LargeTypeContract

class DesktopLargeTypeTest : LargeTypeContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
