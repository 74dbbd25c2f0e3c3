package drawwell.desktop

import drawwell.ui.SupplyContract

class DesktopSupplyTest : SupplyContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
