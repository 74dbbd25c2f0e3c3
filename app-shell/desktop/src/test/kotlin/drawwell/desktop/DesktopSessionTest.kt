package drawwell.desktop

import drawwell.ui.SessionContract

class DesktopSessionTest : SessionContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
