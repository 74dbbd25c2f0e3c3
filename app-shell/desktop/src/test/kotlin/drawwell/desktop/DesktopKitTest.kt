package drawwell.desktop

import drawwell.ui.KitContract

class DesktopKitTest : KitContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
