package drawwell.desktop

import drawwell.ui.SheetContract

class DesktopSheetTest : SheetContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
