package drawwell.desktop

import drawwell.ui.FilesContract

class DesktopFilesTest : FilesContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
